package asfound.report.pdf;

import java.util.List;

/**
 * What stands across a drawing that may not be used for isolation. One that fails is a filled block, one that is
 * unproven or was not read a frame: told apart without colour.
 */
record Stamp(PageState state, List<String> equipment, double size) {

    private static final int NAMED = 4;

    Stamp {
        equipment = List.copyOf(equipment);
    }

    /** Names at most four, and says how many more there are. */
    String line() {
        if (equipment.isEmpty()) return "See page 1 of this file.";
        String names = String.join(", ", equipment.subList(0, Math.min(NAMED, equipment.size())));
        int more = equipment.size() - NAMED;
        return names + (more > 0 ? " and " + more + " more" : "") + ": " + state.ofEquipment + " See page 1.";
    }

    String comment() {
        return state.title + "\n" + (equipment.isEmpty() ? "" : String.join(", ", equipment) + ": ")
                + state.comment
                + " Page 1 of this file gives the reasons.";
    }

    private Type big() {
        return Type.bold(size).in(state == PageState.FAILS ? Tint.WHITE : Tint.RED);
    }

    double width(Typeface typeface) {
        return Math.max(typeface.width(state.title, big()), typeface.width(line(), big().at(size * 0.55))) + size * 1.4;
    }

    double height() {
        return size * 2.3;
    }

    void draw(Canvas canvas) {
        double w = canvas.width(), h = canvas.height(), b = size * 0.09;
        canvas.fill(0, 0, w, h, state == PageState.FAILS ? Tint.RED : Tint.WHITE);
        canvas.box(b / 2, b / 2, w - b, h - b, new Pen(b, Tint.RED));
        canvas.box(b * 2.2, b * 2.2, w - b * 4.4, h - b * 4.4, new Pen(b * 0.5, big().tint()));
        canvas.textCentred(state.title, w / 2, size * 1.12, big());
        canvas.textCentred(line(), w / 2, size * 1.86, big().at(size * 0.55));
    }
}
