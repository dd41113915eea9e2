package asfound.recordset;

import java.util.Locale;
import java.util.Optional;

/** Formats that are recognised so that the user is told what to do about them. */
final class OtherFormats {

    static final String REMEDY = "Export it as PDF, .xlsx or CSV if it belongs to the records.";

    private OtherFormats() {}

    static Optional<String> named(byte[] head, String file) {
        if (starts(head, 0xD0, 0xCF, 0x11, 0xE0))
            return Optional.of("The file is an old or encrypted Office file (.xls, .doc), which is not read.");
        if (isPicture(head)) return Optional.of("The file is a picture, which is not read.");
        if (starts(head, 'A', 'C', '1', '0')) return Optional.of("The file is a CAD drawing (DWG), which is not read.");
        if (starts(head, '{', '\\', 'r', 't', 'f'))
            return Optional.of("The file is a text document (RTF), which is not read.");
        String text = new String(head, java.nio.charset.StandardCharsets.ISO_8859_1).stripLeading();
        if (text.startsWith("<")) return Optional.of("The file is XML or HTML, which is not read.");
        if (text.startsWith("0\r\nSECTION") || text.startsWith("0\nSECTION"))
            return Optional.of("The file is a CAD drawing (DXF), which is not read.");
        if (file.toLowerCase(Locale.ROOT).endsWith(".json")) return Optional.of("The file is JSON, which is not read.");
        return Optional.empty();
    }

    static boolean isPicture(byte[] head) {
        return starts(head, 0xFF, 0xD8, 0xFF)
                || starts(head, 0x89, 'P', 'N', 'G')
                || starts(head, 'G', 'I', 'F', '8')
                || starts(head, 'I', 'I', 0x2A, 0)
                || starts(head, 'M', 'M', 0, 0x2A)
                || (head.length > 12
                        && new String(head, 4, 8, java.nio.charset.StandardCharsets.ISO_8859_1)
                                .matches("ftyp(heic|heix|mif1|avif)"))
                || (starts(head, 'R', 'I', 'F', 'F') && head.length > 12 && head[8] == 'W');
    }

    private static boolean starts(byte[] head, int... bytes) {
        if (head.length < bytes.length) return false;
        for (int i = 0; i < bytes.length; i++) if ((head[i] & 0xFF) != bytes[i]) return false;
        return true;
    }
}
