package asfound.drawing.schedule.offices;

import asfound.model.Voltage;
import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a person reads from one sheet of an office, as written down beside it.
 *
 * @param file the sheet's name, in the folder above
 * @param directories one for each panel that has a directory on it; none on a sheet that shows something else
 */
@JsonIgnoreProperties(ignoreUnknown = true)
record OfficeTruth(String file, List<Panel> directories) {

    /**
     * @param header a null value is not printed
     * @param blankPositions printed with a number and nothing else: may be left out or read as a space
     * @param accept other spellings of a header value that count
     */
    @JsonIgnoreProperties(ignoreUnknown = true)
    record Panel(
            String panel,
            Map<String, String> header,
            List<Integer> blankPositions,
            Map<String, List<String>> accept,
            List<Circuit> circuits) {

        Panel {
            blankPositions = blankPositions == null ? List.of() : List.copyOf(blankPositions);
            accept = accept == null ? Map.of() : Map.copyOf(accept);
        }

        /** Whether a value read from the sheet is the one that is printed there. */
        boolean says(String field, Object read) {
            String want = header.get(field);
            if (want == null) return false;
            if (read instanceof Voltage v)
                return Voltage.parse(want).filter(v::equals).isPresent();
            if (read instanceof Number n) return n.doubleValue() == Double.parseDouble(want);
            return Stream.concat(Stream.of(want), accept.getOrDefault(field, List.of()).stream())
                    .anyMatch(w -> OfficeTruth.plain(w).equals(OfficeTruth.plain(read.toString())));
        }
    }

    /**
     * @param ratingA amperes; null where none is printed
     * @param use load, spare or space
     * @param loadVA the sum over the poles; null where none is printed
     */
    @JsonIgnoreProperties(ignoreUnknown = true)
    record Circuit(
            List<Integer> positions, int poles, Integer ratingA, String description, String use, Double loadVA) {}

    static OfficeTruth of(Path file) throws IOException {
        return new ObjectMapper().readValue(Files.readAllBytes(file), OfficeTruth.class);
    }

    Optional<Panel> panel(String name) {
        return directories.stream()
                .filter(d -> plain(d.panel()).equals(plain(name)))
                .findFirst();
    }

    /** Letters and digits alone, without the word panel in front of a name. */
    static String plain(String text) {
        String upper = text.toUpperCase(Locale.ROOT).strip().replaceFirst("^(PANELBOARD|PANEL|PNL)\\b", "");
        return upper.replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
