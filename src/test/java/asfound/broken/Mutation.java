package asfound.broken;

import java.io.ByteArrayOutputStream;
import java.util.Random;

/**
 * A file with one place changed at random: bits, bytes, tokens or structure.
 *
 * @param bytes the changed content
 * @param from where the change begins in the sound content
 * @param to where it ends in the sound content
 * @param what in words
 */
record Mutation(byte[] bytes, int from, int to, String what) {

    private static final String[] TOKENS = {
        "\"",
        ",",
        "\n",
        "\r",
        ";",
        "\t",
        "\0",
        "\"\"",
        "=1+1",
        "<script>",
        "9".repeat(400),
        "\u00ff\u00fe",
        "stream",
        "endobj",
        ">>",
        "<<",
        "(",
        ")",
        "/Length 99999999",
        "0 R",
        "- [",
        "{",
        "\u202e",
    };

    static Mutation of(byte[] sound, Random random) {
        int at = random.nextInt(sound.length), length = 1 + random.nextInt(Math.min(64, sound.length - at));
        return switch (random.nextInt(8)) {
            case 0 ->
                replaced(sound, at, at + 1, new byte[] {(byte) (sound[at] ^ 1 << random.nextInt(8))}, "a bit turned");
            case 1 -> replaced(sound, at, at + length, random(length, random), "bytes overwritten");
            case 2 -> replaced(sound, at, at + length, new byte[0], "bytes left out");
            case 3 -> replaced(sound, at, at, slice(sound, at, length), "bytes doubled");
            case 4 -> replaced(sound, at, sound.length, new byte[0], "cut off");
            case 5 ->
                replaced(sound, at, at, BrokenFiles.ascii(TOKENS[random.nextInt(TOKENS.length)]), "a token put in");
            case 6 ->
                replaced(
                        sound,
                        at,
                        at + length,
                        BrokenFiles.ascii(TOKENS[random.nextInt(TOKENS.length)]),
                        "a token exchanged");
            default -> {
                int from = random.nextInt(sound.length), n = 1 + random.nextInt(Math.min(200, sound.length - from));
                yield replaced(sound, at, at + length, slice(sound, from, n), "a piece from elsewhere");
            }
        };
    }

    private static Mutation replaced(byte[] sound, int from, int to, byte[] by, String what) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(sound, 0, from);
        out.writeBytes(by);
        out.write(sound, to, sound.length - to);
        return new Mutation(out.toByteArray(), from, to, what + " at " + from);
    }

    private static byte[] slice(byte[] bytes, int from, int length) {
        return java.util.Arrays.copyOfRange(bytes, from, from + length);
    }

    private static byte[] random(int length, Random random) {
        byte[] bytes = new byte[length];
        random.nextBytes(bytes);
        return bytes;
    }
}
