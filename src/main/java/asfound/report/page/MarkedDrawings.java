package asfound.report.page;

import asfound.audit.Audit;
import asfound.model.Place;
import asfound.report.pdf.Redlines;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Links from the page to the marked copies beside it. */
public final class MarkedDrawings {

    private final Map<String, String> copies;

    MarkedDrawings(Audit audit) {
        copies = Redlines.names(audit);
    }

    /** The page of the marked copy that shows the place; empty where its drawing is no PDF. */
    public Optional<String> link(Place place) {
        return Optional.ofNullable(copies.get(place.file()))
                .map(copy -> encoded(copy)
                        + (place instanceof Place.OnPage p ? "#page=" + (p.page() + Redlines.PAGES_IN_FRONT) : ""));
    }

    private static String encoded(String path) {
        return Arrays.stream(path.split("/"))
                .map(s -> URLEncoder.encode(s, StandardCharsets.UTF_8).replace("+", "%20"))
                .collect(Collectors.joining("/"));
    }
}
