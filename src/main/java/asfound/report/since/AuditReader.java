package asfound.report.since;

import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.report.AuditJson;
import asfound.report.folder.OutputFolder;
import asfound.report.since.WrittenAudit.Found;
import asfound.report.since.WrittenAudit.Input;
import asfound.report.since.WrittenAudit.Judged;
import asfound.report.since.WrittenAudit.Part;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads an {@code audit.json} back. What the format names must be there; what it only allows may be missing. */
public final class AuditReader {

    private final Member audit;

    private AuditReader(Member audit) {
        this.audit = audit;
    }

    /**
     * Reads the file, or the {@code audit.json} of the report folder that is given.
     *
     * @param limits how large it may be
     */
    public static WrittenAudit read(Path path, Limits limits) throws NotAnAuditException {
        Path file = Files.isDirectory(path) ? path.resolve("audit.json") : path;
        try {
            if (!Files.exists(file) && file.toAbsolutePath().getParent() != null)
                OutputFolder.recover(file.toAbsolutePath().getParent());
            if (!Files.isRegularFile(file)) throw new NotAnAuditException(file, "there is no such file.");
            long most = limits.amount(Limit.REPORT_MB);
            if (Files.size(file) > most)
                throw new NotAnAuditException(
                        file,
                        "it is larger than " + most + " bytes. If it is meant to be, " + Limit.REPORT_MB.raise() + ".");
            return new AuditReader(new Member(parsed(file), "")).audit();
        } catch (JsonProcessingException e) {
            throw new NotAnAuditException(file, "it is no JSON" + where(e) + ".");
        } catch (NotAnAuditException e) {
            throw e;
        } catch (Member.Missing e) {
            throw new NotAnAuditException(file, e.getMessage());
        } catch (IOException e) {
            throw new NotAnAuditException(file, "it could not be read (" + e.getMessage() + ").");
        }
    }

    private static JsonNode parsed(Path file) throws IOException {
        JsonMapper mapper = JsonMapper.builder()
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .build();
        try (InputStream in = Files.newInputStream(file)) {
            JsonNode node = mapper.readTree(in);
            String schema = node.path("schema").asText("");
            if (schema.equals(AuditJson.SCHEMA)) return node;
            if (schema.startsWith("asfound-audit/"))
                throw new NotAnAuditException(
                        file, "it is written as " + schema + ", which this version does not know.");
            throw new NotAnAuditException(file, "it is no audit of asfound.");
        }
    }

    private static String where(JsonProcessingException e) {
        return e.getLocation() == null ? "" : " (line " + e.getLocation().getLineNr() + ")";
    }

    private WrittenAudit audit() {
        List<Found> findings = new ArrayList<>();
        for (Member finding : audit.list("findings")) findings.add(finding(finding, false));
        if (audit.has("accepted")) for (Member finding : audit.list("accepted")) findings.add(finding(finding, true));
        List<String> equipment =
                audit.list("equipment").stream().map(e -> e.text("name")).toList();
        return new WrittenAudit(
                audit.text("building"),
                inputs(),
                findings,
                isolation(),
                drawings(),
                equipment,
                devices(),
                directories());
    }

    private Map<String, Input> inputs() {
        Map<String, Input> inputs = new TreeMap<>();
        for (Member input : audit.list("inputs"))
            inputs.put(
                    input.text("file"),
                    new Input(
                            input.text("kind"),
                            input.text("sha256"),
                            input.list("problems").size()));
        return inputs;
    }

    private static Found finding(Member f, boolean accepted) {
        Set<Part> parts = new LinkedHashSet<>();
        parts.add(part(f));
        for (Member other : f.list("others")) parts.add(part(other));
        return new Found(
                f.text("id"),
                f.text("kind"),
                f.text("severity"),
                List.copyOf(parts),
                f.text("drawn"),
                f.text("found"),
                files(f.list("drawings")),
                files(f.list("evidence")),
                f.text("message"),
                accepted);
    }

    private static Part part(Member member) {
        return new Part(member.text("equipment"), member.optional("circuit"));
    }

    private static List<String> files(List<Member> places) {
        Set<String> files = new TreeSet<>();
        for (Member place : places) files.add(place.text("file"));
        return List.copyOf(files);
    }

    private Map<String, Judged> isolation() {
        Map<String, Judged> isolation = new TreeMap<>();
        for (Member v : audit.list("isolation")) {
            Optional<List<String>> found =
                    v.optionalList("foundPoints") ? Optional.of(v.texts("foundPoints")) : Optional.empty();
            isolation.put(
                    v.text("equipment"),
                    new Judged(
                            v.text("equipment"), v.text("verdict"), v.texts("drawnPoints"), found, v.text("reason")));
        }
        return isolation;
    }

    private Map<String, List<String>> drawings() {
        Map<String, List<String>> drawings = new TreeMap<>();
        for (Member drawing : audit.list("drawings")) drawings.put(drawing.text("file"), drawing.texts("panels"));
        return drawings;
    }

    private Optional<Map<String, String>> devices() {
        if (!audit.has("devices")) return Optional.empty();
        Map<String, String> devices = new TreeMap<>();
        for (Member device : audit.list("devices")) devices.put(device.text("device"), device.text("tracing"));
        return Optional.of(devices);
    }

    /** Each entry in words; the supply in the header stands as the entry {@code fed from}. */
    private Map<String, Map<String, String>> directories() {
        Map<String, Map<String, String>> directories = new TreeMap<>();
        for (Member directory : audit.list("directories")) {
            Map<String, String> entries =
                    directories.computeIfAbsent(directory.text("panel"), panel -> new TreeMap<>());
            directory.object("header").optional("fedFrom").ifPresent(supply -> entries.put("fed from", supply));
            for (Member circuit : directory.list("circuits"))
                entries.merge(circuit.optional("position").orElse(""), entry(circuit), (a, b) -> a + " | " + b);
        }
        return directories;
    }

    private static String entry(Member c) {
        return c.optional("description").orElse("") + ", " + c.text("use") + ", "
                + c.optional("ratingA").orElse("?") + " A, "
                + c.optional("poles").orElse("?") + " poles";
    }
}
