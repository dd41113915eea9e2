package asfound.report.page;

import asfound.audit.Audit;
import asfound.model.Place;
import asfound.recordset.Source;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Links from the page to the marked copies beside it. */
public final class MarkedDrawings {

    /** Pages that stand before the drawing's own first page in its marked copy. */
    private static final int PAGES_IN_FRONT = 1;

    private final Map<String, String> copies = new HashMap<>();

    MarkedDrawings(Audit audit) {
        for (Audit.Input in : audit.inputs())
            if (in.source().kind() == Source.Kind.PDF)
                copies.put(in.source().file(), copy(in.source().file()));
    }

    private static String copy(String file) {
        return "redlines/" + file.substring(file.lastIndexOf('/') + 1);
    }

    /** The page of the marked copy that shows the place; empty where its drawing is no PDF. */
    public Optional<String> link(Place place) {
        return Optional.ofNullable(copies.get(place.file()))
                .map(copy -> encoded(copy)
                        + (place instanceof Place.OnPage p ? "#page=" + (p.page() + PAGES_IN_FRONT) : ""));
    }

    private static String encoded(String path) {
        return Arrays.stream(path.split("/"))
                .map(s -> URLEncoder.encode(s, StandardCharsets.UTF_8).replace("+", "%20"))
                .collect(Collectors.joining("/"));
    }
}
