package asfound.broken;

import static asfound.broken.BrokenFiles.ascii;

import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A whole record set in which sound files lie beside everything that can come by mail, to be read whole. */
final class HostileSet {

    static final String SCRIPT = "<script>alert(1)</script>";
    private static final String HEAD = "panel,circuit,relation,found,kind,method,note\n";
    private static final int MB = 1 << 20;

    private final Path root;
    private final int bombMB;
    /** What must be told of each hostile file, by its name as it is shown. */
    private final Map<String, String> told = new LinkedHashMap<>();

    private HostileSet(Path root, int bombMB) {
        this.root = root;
        this.bombMB = bombMB;
    }

    /** Writes the set for a run by hand: {@code java -Xmx512m -jar target/asfound.jar audit FOLDER}. */
    public static void main(String[] args) throws IOException {
        in(Path.of(args[0]), 600);
    }

    /**
     * Writes it.
     *
     * @param bombMB how far its bombs expand
     * @return what must be told of each hostile file
     */
    static Map<String, String> in(Path root, int bombMB) throws IOException {
        HostileSet set = new HostileSet(root, bombMB);
        for (String folder : new String[] {"drawings", "one-line", "survey"})
            Files.createDirectories(root.resolve(folder));
        set.sound();
        set.drawings();
        set.tables();
        set.names();
        return set.told;
    }

    private void sound() throws IOException {
        Files.copy(Path.of("fixtures/kestrel-wharf/drawings/LP-1A.pdf"), root.resolve("drawings/LP-1A.pdf"));
        text("one-line/feeders.csv", "from,device,to,rating_a\nUtility,,MDP,\nMDP,7,LP-1A,225\nMDP,9,LP-2A,100\n");
        text("survey/sound.csv", HEAD + "MDP,7,feeds,LP-1A,panel,opened,\nMDP,11,feeds,LP-2A,panel,opened,\n");
    }

    private void drawings() throws IOException {
        byte[] sound = Files.readAllBytes(root.resolve("drawings/LP-1A.pdf"));
        file("drawings/locked.pdf", BrokenFiles.encrypted(), "is locked with a password");
        file("drawings/half.pdf", Arrays.copyOf(sound, sound.length / 2), "its end mark is missing");
        file("drawings/zero.pdf", new byte[0], "is empty (0 bytes)");
        byte[] content = ascii("BT /F1 10 Tf 40 700 Td (PANEL) Tj ET");
        file("drawings/claims.pdf", BrokenFiles.pdf("/Length 4294967296", content), "No panel schedule was recognised");
        file("drawings/cycle.pdf", BrokenFiles.cyclicPages(), "No panel schedule was recognised");
        file("drawings/many.pdf", BrokenFiles.pages(10_000), " of 10000 pages were read");
        byte[] zeros = BrokenFiles.deflatedZeros(bombMB * MB);
        file("drawings/bomb.pdf", BrokenFiles.pdf("/Length 9/Filter/FlateDecode", zeros), "expands to more than");
        // the inner one is small, what it unpacks to is a bomb itself
        file(
                "drawings/bomb-in-bomb.pdf",
                BrokenFiles.pdf("/Length " + twice(zeros).length + "/Filter[/FlateDecode/FlateDecode]", twice(zeros)),
                "The page's content is damaged or not all there (a part of its content cannot be unpacked)");
        try (OutputStream out = Files.newOutputStream(root.resolve("drawings/bomb.xlsx"));
                ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.setLevel(Deflater.BEST_SPEED);
            zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            for (int i = 0; i < bombMB; i++) zip.write(new byte[MB]);
        }
        told.put("drawings/bomb.xlsx", "expands to more than");
        file(
                "drawings/entity.xlsx",
                BrokenFiles.zip(
                        "xl/sharedStrings.xml", ascii("<!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/passwd'>]>")),
                "declares a document type");
        file("drawings/slip.xlsx", BrokenFiles.zip("../../../slipped.txt", ascii("x")), "could not be read");
        try (RandomAccessFile huge =
                new RandomAccessFile(root.resolve("drawings/huge.pdf").toFile(), "rw")) {
            huge.write(ascii("%PDF-1.7\n"));
            huge.setLength(4L << 30);
        }
        told.put("drawings/huge.pdf", "has 4294967296 bytes, more than the limit");
    }

    private static byte[] twice(byte[] deflated) throws IOException {
        var out = new java.io.ByteArrayOutputStream();
        try (OutputStream deflate = new DeflaterOutputStream(out)) {
            deflate.write(deflated);
        }
        return out.toByteArray();
    }

    private void tables() throws IOException {
        file("survey/nul.csv", ascii(HEAD + "MDP,13,feeds,LP\u0000-3,panel,tone,\n"), "holds NUL bytes");
        file(
                "survey/quote.csv",
                ascii(HEAD + "MDP,15,feeds,\"LP-4,panel,tone,\nMDP,17,feeds,LP-5,panel,tone,\n"),
                "is not closed");
        file(
                "survey/long.csv",
                ascii(HEAD + "MDP,19,feeds," + "x".repeat(1_000_000) + ",panel,tone,\n"),
                "has 1000000 characters");
        file(
                "survey/mixed.csv",
                ascii(HEAD + "MDP,21,feeds,Caf\u00c3\u00a9,load,tone,\nMDP,23,feeds,Caf\u00e9,load,tone,\n"),
                "mixes encodings");
        text(
                "survey/texts.csv",
                HEAD
                        + "MDP,25,feeds," + SCRIPT + ",load,tone,\n"
                        + "MDP,27,feeds,\u001b[31mRED\u001b[0m\u0007 pump,load,tone,\n"
                        + "MDP,29,feeds,\u202E2-PL room,load,tone,\n"
                        + "MDP,31,feeds,LP-2\u0391,panel,opened,Greek letter\n"
                        + "MDP,33,feeds,\"=HYPERLINK(\"\"http://x\"\")\",load,tone,\n"
                        + "../../escaped,1,feeds,pump,load,tone,\n");
        told.put("survey/texts.csv", "looks like LP-2A and was not taken for it");
    }

    private void names() throws IOException {
        text("survey/bell\u0007\u001b[31m.csv", "to whom it may concern\n");
        told.put("survey/bell??[31m.csv", "was not understood");
        text("survey/turn\u202Efdp.csv", "to whom it may concern\n");
        told.put("survey/turn?fdp.csv", "was not understood");
        Files.copy(root.resolve("drawings/LP-1A.pdf"), root.resolve("drawings/x\\..\\..\\evil.pdf"));
        Path outside = Files.createDirectories(root.resolveSibling("outside"));
        Files.writeString(outside.resolve("secret.csv"), HEAD + "MDP,35,feeds,SECRET,panel,opened,\n");
        Files.createSymbolicLink(root.resolve("survey/link.csv"), outside.resolve("secret.csv"));
        told.put("survey/link.csv", "leads out of the record set");
        Files.createSymbolicLink(root.resolve("drawings/linked"), outside);
        told.put("drawings/linked", "leads out of the record set");
        Files.createSymbolicLink(root.resolve("drawings/loop"), root.resolve("drawings/loop"));
        told.put("drawings/loop", "leads nowhere");
    }

    private void file(String name, byte[] content, String message) throws IOException {
        Files.write(root.resolve(name), content);
        told.put(name, message);
    }

    private void text(String name, String content) throws IOException {
        Files.write(root.resolve(name), content.getBytes(StandardCharsets.UTF_8));
    }
}
