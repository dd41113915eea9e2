package asfound.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;

/** The page's own style, script and symbols, which it carries inside. */
final class Assets {

    private static final List<String> STYLES =
            List.of("base.css", "sections.css", "picture.css", "forced.css", "print.css");
    private static final List<String> SCRIPTS = List.of("sheet.js", "picture.js", "search.js", "filter.js");

    private Assets() {}

    static String style() {
        return STYLES.stream().map(Assets::read).collect(Collectors.joining("\n"));
    }

    static String script() {
        return SCRIPTS.stream().map(Assets::read).collect(Collectors.joining("\n"));
    }

    static String symbols() {
        return read("symbols.svg");
    }

    /**
     * The content security policy that lets exactly this style and this script work and nothing else: no other script,
     * whatever a drawing's text holds, and nothing from outside.
     */
    static String policy(String style, String script) {
        return "default-src 'none'; style-src " + hash(style) + "; script-src " + hash(script)
                + "; base-uri 'none'; form-action 'none'";
    }

    private static String hash(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static String read(String name) {
        try (InputStream in = Assets.class.getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException("missing from the program: " + name);
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
