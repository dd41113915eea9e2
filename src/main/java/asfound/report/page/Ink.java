package asfound.report.page;

import asfound.model.EquipmentKind;
import asfound.report.picture.Picture;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Numbers and shapes as an SVG picture writes them. */
public final class Ink {

    private Ink() {}

    /** To a tenth, without needless digits: {@code 12}, {@code 12.5}. */
    public static String n(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : String.format(Locale.ROOT, "%.1f", tenths / 10.0);
    }

    public static String path(List<Picture.Point> points) {
        return points.stream().map(p -> n(p.x()) + " " + n(p.y())).collect(Collectors.joining(" L", "M", ""));
    }

    public static String at(double x, double y) {
        return "translate(" + n(x) + " " + n(y) + ")";
    }

    /** A box of this kind carries a symbol; panels and switchboards are told by their bus. */
    public static boolean hasIcon(Picture.Symbol s) {
        return s.form() == Picture.Form.BOX && s.kind() != EquipmentKind.PANEL && s.kind() != EquipmentKind.SWITCHBOARD;
    }

    /** The id of the symbol of a kind, without its prefix. */
    public static String symbol(EquipmentKind kind) {
        return kind == EquipmentKind.UNKNOWN ? "unknown" : kind.word().replace(' ', '-');
    }
}
