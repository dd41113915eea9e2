package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.isolation.Verdict.Standing;
import asfound.model.Natural;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.network.Equipment;
import asfound.recordset.Source;
import asfound.report.Unread;
import asfound.report.folder.FileNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which drawings get a marked copy, and what goes into each. */
public final class Redlines {

    /** Pages that stand before the drawing's own first page in its marked copy: the summary's first. */
    public static final int PAGES_IN_FRONT = 1;

    private Redlines() {}

    /** One for each PDF of the record set, in order of file. */
    public static List<Redline> of(Audit audit) {
        Map<String, String> names = names(audit);
        Unread unread = Unread.of(audit);
        List<Redline> all = new ArrayList<>();
        for (Audit.Input input : audit.inputs()) {
            String file = input.source().file();
            if (!names.containsKey(file)) continue;
            Optional<DrawingVerdict> verdict = audit.drawingVerdicts().stream()
                    .filter(v -> v.file().equals(file))
                    .findFirst();
            all.add(new Redline(
                    input,
                    names.get(file),
                    Marks.of(file, audit.findings(), audit.drawings().directories()),
                    verdict,
                    pages(audit, input, verdict, unread.in(file)),
                    unread.in(file),
                    audit.recordSet().building()));
        }
        return all;
    }

    /**
     * The marked copy's name in the output folder by the drawing's file: {@code drawings/east/LP 2.pdf} gives
     * {@code redlines/LP 2.pdf}, and a second of that name {@code redlines/LP 2 (2).pdf}. Distinct on every file system.
     */
    public static Map<String, String> names(Audit audit) {
        Set<String> taken = new HashSet<>();
        Map<String, String> names = new LinkedHashMap<>();
        for (Audit.Input input : audit.inputs()) {
            String file = input.source().file();
            if (input.source().kind() != Source.Kind.PDF) continue;
            String base = FileNames.of(file.substring(file.lastIndexOf('/') + 1).replaceFirst("(?i)\\.pdf$", ""));
            String name = base;
            for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) name = base + " (" + i + ")";
            names.put(file, "redlines/" + name + ".pdf");
        }
        return names;
    }

    /** Drawings that cannot be marked as PDF (workbooks, tables): their corrections stand in the correction list alone. */
    public static List<String> notMarked(Audit audit) {
        return audit.inputs().stream()
                .map(Audit.Input::source)
                .filter(s -> switch (s.kind()) {
                    case WORKBOOK, SCHEDULE_TABLE, FEEDERS, EQUIPMENT -> true;
                    default -> false;
                })
                .map(Source::file)
                .toList();
    }

    private static Map<Integer, Redline.PageVerdict> pages(
            Audit audit, Audit.Input input, Optional<DrawingVerdict> verdict, List<Problem> problems) {
        Map<Integer, Redline.PageVerdict> pages = new TreeMap<>();
        if (verdict.isPresent() && verdict.get().standing() != Standing.AGREES) {
            pages.putAll(judged(audit, input.source().file()));
            // the drawing as a whole may not be used, and no page is known to be better than another
            PageState whole = PageState.of(verdict.get().standing());
            if (pages.isEmpty())
                for (int page = 1; page <= input.pages(); page++)
                    pages.put(page, new Redline.PageVerdict(whole, List.of()));
        }
        for (int page : unread(audit, input, problems))
            pages.putIfAbsent(page, new Redline.PageVerdict(PageState.NOT_READ, List.of()));
        return pages;
    }

    /** The worst verdict of each page that shows equipment which fails or is unproven. */
    private static Map<Integer, Redline.PageVerdict> judged(Audit audit, String file) {
        Map<String, Standing> standings = new HashMap<>();
        for (Verdict v : audit.verdicts()) standings.put(v.equipment(), v.standing());
        Map<Integer, Map<Standing, List<String>>> shown = new TreeMap<>();
        for (Equipment equipment : audit.network().equipment()) {
            Standing standing = standings.get(equipment.name());
            if (standing == null || standing == Standing.AGREES) continue;
            for (int page : shownOn(equipment, file))
                shown.computeIfAbsent(page, p -> new TreeMap<>())
                        .computeIfAbsent(standing, s -> new ArrayList<>())
                        .add(equipment.name());
        }
        Map<Integer, Redline.PageVerdict> pages = new TreeMap<>();
        shown.forEach((page, by) -> {
            Map.Entry<Standing, List<String>> worst = by.entrySet().iterator().next();
            List<String> names = worst.getValue().stream().sorted(Natural.ORDER).toList();
            pages.put(page, new Redline.PageVerdict(PageState.of(worst.getKey()), names));
        });
        return pages;
    }

    /** Pages that show no equipment, as far as was read, and have a problem: their own, or one of the whole file. */
    private static Set<Integer> unread(Audit audit, Audit.Input input, List<Problem> problems) {
        Set<Integer> unread = new TreeSet<>();
        for (Problem p : problems) {
            if (p.place() instanceof Place.OnPage on) unread.add(on.page());
            else for (int page = 1; page <= input.pages(); page++) unread.add(page);
        }
        for (Equipment equipment : audit.network().equipment())
            unread.removeAll(shownOn(equipment, input.source().file()));
        return unread;
    }

    private static Set<Integer> shownOn(Equipment equipment, String file) {
        Set<Integer> pages = new TreeSet<>();
        for (Place place : equipment.drawnAt()) if (place.file().equals(file)) pages.add(place.pageNumber());
        return pages;
    }
}
