package asfound.drawing.schedule.header;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Forms with boxes to tick: {@code [X] MLO [ ] MCB}, {@code MLO ☐ MCB ☒}. What stands beside an empty box is not said; the
 * marks themselves are taken away.
 */
final class Ticks {

    private static final Pattern TICKED = Pattern.compile("[\\[(][xX✓✔√][\\])]|[☑☒■✓✔]");
    private static final Pattern EMPTY = Pattern.compile("\\[[_ ]*\\]|\\(\\)|[☐□▢◻]");

    private static final String BOX_BEGINS = "[(☑☒■✓✔☐□▢◻";

    /** A word of a form, or one of its boxes with its bracket, mark and bracket. */
    private record Item(Word word, boolean box, boolean ticked) {}

    private Ticks() {}

    /** The phrases without what nobody ticked. */
    static List<Phrase> chosen(List<Phrase> phrases) {
        List<Phrase> out = new ArrayList<>(phrases.size());
        for (Phrase p : phrases) {
            List<Item> items = mayHaveBox(p) ? items(p) : List.of();
            if (items.stream().noneMatch(Item::box)) out.add(p);
            else {
                List<Word> said = items.get(items.size() - 1).box() ? boxesBehind(items) : boxesBefore(items);
                if (!said.isEmpty()) out.add(Phrase.of(said));
            }
        }
        return out;
    }

    private static boolean mayHaveBox(Phrase p) {
        for (Word w : p.words()) if (BOX_BEGINS.indexOf(w.text().charAt(0)) >= 0) return true;
        return false;
    }

    private static List<Item> items(Phrase p) {
        List<Item> out = new ArrayList<>();
        List<Word> words = p.words();
        for (int i = 0; i < words.size(); i++) {
            String text = words.get(i).text();
            boolean opens = text.equals("[") || text.equals("(");
            int end = i;
            for (int n = 1; opens && n <= 2 && i + n < words.size(); n++) {
                text += words.get(i + n).text();
                if (!TICKED.matcher(text).matches() && !EMPTY.matcher(text).matches()) continue;
                end = i + n;
                break;
            }
            if (opens && end == i) text = words.get(i).text();
            boolean ticked = TICKED.matcher(text).matches();
            out.add(new Item(words.get(i), ticked || EMPTY.matcher(text).matches(), ticked));
            i = end;
        }
        return out;
    }

    private static List<Word> boxesBefore(List<Item> items) {
        List<Word> said = new ArrayList<>();
        boolean counts = true;
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            if (item.box()) counts = item.ticked();
            else {
                // another label ends what belongs to the box
                counts |= label(items, i).isPresent();
                if (counts) said.add(item.word());
            }
        }
        return said;
    }

    private static List<Word> boxesBehind(List<Item> items) {
        List<Word> said = new ArrayList<>(), open = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            Optional<Labels.Label> label = item.box() ? Optional.empty() : label(items, i);
            if (label.isPresent()) {
                said.addAll(open);
                open.clear();
                for (int end = label.get().end(); i < end; i++)
                    said.add(items.get(i).word());
                i--;
            } else if (!item.box()) open.add(item.word());
            else {
                if (item.ticked()) said.addAll(open);
                open.clear();
            }
        }
        return said;
    }

    private static Optional<Labels.Label> label(List<Item> items, int at) {
        List<String> words =
                items.stream().map(i -> i.box() ? "[]" : i.word().text()).toList();
        return Labels.at(words, at).filter(Labels.Label::marked);
    }
}
