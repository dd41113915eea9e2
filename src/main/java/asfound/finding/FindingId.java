package asfound.finding;

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

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
