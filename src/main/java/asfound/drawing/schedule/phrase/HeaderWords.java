package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Word;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The words of a phrase as labels and values need them: parted after a colon that has no space behind it, and the phrase
 * itself parted where an office puts a bar or a bullet between one thing and the next.
 */
public final class HeaderWords {

    private static final Pattern BEHIND_MARK = Pattern.compile("(?<=[:=])(?=[^\\s:=])");
    private static final Pattern PARTING = Pattern.compile("[|¦•·●▪■◦∙*]+|//+");

    /** As what parts begins. */
    private static final String PARTS = "|¦•·●▪■◦∙*/";

    private HeaderWords() {}

    public static List<String> of(Phrase phrase) {
        return texts(pieces(phrase));
    }

    public static List<String> texts(List<Piece> pieces) {
        List<String> out = new ArrayList<>(pieces.size());
        for (Piece p : pieces) out.add(p.text());
        return out;
    }

    /** A word or a part of one, and the word that it stands in. */
    public record Piece(String text, Word word) {}

    public static List<Piece> pieces(Phrase phrase) {
        List<Piece> out = new ArrayList<>();
        for (Word w : phrase.words()) {
            if (!isMarkedWithin(w.text())) out.add(new Piece(w.text(), w));
            else for (String part : BEHIND_MARK.split(w.text())) out.add(new Piece(part, w));
        }
        return out;
    }

    /** A mark of a label stands before its end. */
    private static boolean isMarkedWithin(String text) {
        int colon = text.indexOf(':'), equal = text.indexOf('='), last = text.length() - 1;
        return colon >= 0 && colon < last || equal >= 0 && equal < last;
    }

    /** Pieces that stand together, as a phrase of their own. */
    public static Phrase phrase(List<Piece> pieces) {
        Box box = pieces.stream().map(p -> p.word().box()).reduce(Box::union).orElseThrow();
        String text = String.join(" ", pieces.stream().map(Piece::text).toList());
        return new Phrase(pieces.stream().map(Piece::word).distinct().toList(), text, box);
    }

    /** The phrases with those parted that say several things between bars, bullets or semicolons. */
    public static List<Phrase> parted(List<Phrase> phrases) {
        List<Phrase> out = new ArrayList<>();
        for (Phrase p : phrases) {
            List<Word> open = new ArrayList<>();
            for (Word w : p.words()) {
                boolean parts = isParting(w.text());
                if (!parts) open.add(w);
                boolean ends = parts || w.text().length() > 1 && w.text().endsWith(";");
                if (ends && !open.isEmpty()) {
                    out.add(Phrase.of(open));
                    open = new ArrayList<>();
                }
            }
            if (open.size() == p.words().size()) out.add(p);
            else if (!open.isEmpty()) out.add(Phrase.of(open));
        }
        return out;
    }

    private static boolean isParting(String text) {
        return !text.isEmpty()
                && PARTS.indexOf(text.charAt(0)) >= 0
                && PARTING.matcher(text).matches();
    }
}
