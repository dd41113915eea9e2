package asfound.report.page;

import asfound.audit.Audit;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.model.Problem;
import asfound.report.Unread;
import asfound.report.picture.Picture;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * What the page shows.
 *
 * @param index the audit's parts by what they are about
 * @param pictures the one-line, sheet by sheet
 * @param style the page's style sheet
 * @param script the page's script
 * @param symbols definitions of the one-line's symbols
 */
public record Page(Audit audit, Index index, List<Picture> pictures, String style, String script, String symbols) {

    public String building() {
        return audit.recordSet().building();
    }

    public String policy() {
        return Assets.policy(style, script);
    }

    public List<Verdict> verdicts(Verdict.Standing standing) {
        return audit.verdicts().stream().filter(v -> v.standing() == standing).toList();
    }

    public int count(Verdict.Standing standing) {
        return verdicts(standing).size();
    }

    /** Between which days the survey was made; empty where it gives none. */
    public String surveyed() {
        List<LocalDate> days = audit.survey().stream()
                .map(Observation::date)
                .map(d -> d.or(null))
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        if (days.isEmpty()) return "";
        LocalDate first = days.get(0), last = days.get(days.size() - 1);
        return first.equals(last) ? first.toString() : first + " to " + last;
    }

    /** Every sheet of the one-line is wider than high, and fits paper laid that way. */
    public boolean isWide() {
        return pictures.stream().allMatch(p -> p.width() > p.height() * 1.15);
    }

    public List<Problem> unread() {
        return Unread.of(audit).all();
    }

    /** How many rows of a long list stand open; the rest are folded and their number is said. */
    public static final int OPEN_ROWS = 24;

    public static <T> List<T> open(List<T> all) {
        return all.subList(0, Math.min(OPEN_ROWS, all.size()));
    }

    public static <T> List<T> folded(List<T> all) {
        return all.subList(Math.min(OPEN_ROWS, all.size()), all.size());
    }
}
