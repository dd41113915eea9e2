package asfound.report.terminal;

import asfound.recordset.Limit;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;

/** The limits of what the input may ask for, as a person reads them in a terminal: what each bounds, and what becomes of more. */
public final class LimitsText {

    private static final int NAME = 12;
    private static final int NUMBER = 9;
    private static final int INDENT = NAME + NUMBER + 2;

    private LimitsText() {}

    /**
     * The lines, without line ends.
     *
     * @param charset what the terminal can show
     */
    public static List<String> of(Charset charset) {
        Shown shown = Shown.in(charset);
        List<String> lines = new ArrayList<>(shown.wrapped(
                "What goes over a limit is reported with its file, page or row; everything else is read. Raise or lower"
                        + " limits for one run with --allow:",
                Shown.WIDTH));
        lines.add("");
        lines.add("  asfound audit our-building --allow pages=5000 --allow page-seconds=120");
        lines.add("");
        lines.add(row("limit", "usual") + "of what, and what becomes of more");
        for (Limit limit : Limit.values()) {
            String lead = row(limit.inWords(), Integer.toString(limit.usual()));
            for (String text : List.of(limit.bounds().replace("`", ""), limit.beyond()))
                for (String line : shown.wrapped(text, Shown.WIDTH - INDENT)) {
                    lines.add(lead + line);
                    lead = " ".repeat(INDENT);
                }
        }
        return List.copyOf(lines);
    }

    private static String row(String name, String usual) {
        return name + " ".repeat(NAME + NUMBER - name.length() - usual.length()) + usual + "  ";
    }
}
