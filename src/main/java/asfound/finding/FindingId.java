package asfound.finding;

import asfound.model.Observation;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.stream.Collectors;

/** The identity of a finding across runs. */
final class FindingId {

    private FindingId() {}

    /** The kind and eight hexadecimal digits of the hash of where it is: {@code crossed-feeds-1a2b3c4d}. */
    static String of(Finding finding) {
        String others = finding.others().stream()
                .map(part -> part.equipment() + "/" + part.circuit().orElse(""))
                .sorted()
                .collect(Collectors.joining("|"));
        String where = finding.kind() + "|" + finding.equipment() + "/"
                + finding.circuit().orElse("") + "|" + others;
        return finding.kind() + "-" + sha256(where).substring(0, 8);
    }

    /** Sixteen hexadecimal digits of the hash of severity, both sides, and the observations in any order. */
    static String factsOf(Finding finding) {
        String seen = finding.evidence().stream()
                .map(FindingId::seen)
                .sorted()
                .distinct()
                .collect(Collectors.joining("|"));
        String facts =
                of(finding) + "|" + finding.severity() + "|" + finding.drawn() + "|" + finding.found() + "|" + seen;
        return sha256(facts).substring(0, 16);
    }

    private static String seen(Observation o) {
        return String.join(
                "/",
                o.panel().raw().strip(),
                o.circuit().raw().strip(),
                o.relation().word(),
                o.found().raw().strip(),
                o.method().word(),
                o.ratingA().raw().strip(),
                o.poles().raw().strip(),
                o.voltage().raw().strip(),
                o.phase().raw().strip(),
                o.date().raw().strip());
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
