package asfound.drawing.schedule.sample;

import java.util.Random;

/** How an office might draw its schedules: one choice on every axis. */
record SampleLayout(
        Sides sides,
        Numbers numbers,
        Carry carry,
        DeviceStyle device,
        LoadStyle loads,
        Ruling ruling,
        HeaderStyle header,
        HeaderPlace headerPlace,
        TextStyle text,
        PageTurn turn,
        Words words,
        int panelsOnSheet,
        boolean wire,
        boolean phase,
        boolean type,
        boolean turnedHeadings,
        boolean wrapped,
        boolean titleBlock,
        boolean notes,
        boolean upper,
        boolean totals,
        boolean encrypted,
        boolean cropped,
        boolean lugs,
        boolean continued,
        String font,
        double size) {

    enum Sides {
        CENTRE,
        OUTSIDE,
        LEFT_OF_EACH,
        HALVES,
        LIST,
        ROWS,
        ODD_THEN_EVEN,
        WAYS
    }

    /** How the positions of a device with several poles are written. */
    enum Numbers {
        EACH,
        COMMAS,
        HYPHENS,
        SLASHES,
        ONCE
    }

    /** What stands in further rows of a device. */
    enum Carry {
        BLANK,
        DASH,
        DITTO,
        REPEATED,
        JOINED
    }

    enum DeviceStyle {
        TWO_COLUMNS,
        SLASH,
        A_DASH_P,
        A_SPACE_P,
        P_DASH_A,
        WITH_UNITS,
        /** No poles printed: marks or joined cells alone tell them. */
        RATING_ONLY
    }

    enum LoadStyle {
        NONE,
        VA_EACH,
        VA_SUM,
        KVA_EACH,
        VA_BY_PHASE,
        KVA_BY_PHASE
    }

    enum Ruling {
        FULL,
        NONE,
        ACROSS,
        DOWN,
        BOX_AND_FIFTHS,
        BANDS
    }

    enum HeaderStyle {
        COLON_LINES,
        GRID,
        LABEL_OVER_VALUE,
        RUNNING
    }

    enum HeaderPlace {
        ABOVE,
        BELOW,
        RIGHT
    }

    enum TextStyle {
        WHOLE,
        LETTERS,
        SPACED,
        ONE_STRING,
        DOUBLED
    }

    enum PageTurn {
        UPRIGHT,
        ROTATE_90,
        ROTATE_180,
        ROTATE_270,
        CONTENT_UP,
        LARGE_SHEET
    }

    enum Words {
        SHORT,
        LONG,
        TWO_LINES,
        OTHER
    }

    static SampleLayout random(Random r) {
        Sides sides = any(r, Sides.values());
        boolean list = sides == Sides.LIST;
        boolean ways = sides == Sides.WAYS;
        Numbers numbers = list
                ? any(r, new Numbers[] {Numbers.COMMAS, Numbers.HYPHENS, Numbers.SLASHES})
                : ways || r.nextInt(3) > 0 ? Numbers.EACH : Numbers.ONCE;
        Ruling ruling = any(r, Ruling.values());
        Carry carry = any(r, Carry.values());
        if (carry == Carry.JOINED && (ruling != Ruling.FULL || numbers == Numbers.ONCE || sides == Sides.ROWS))
            carry = Carry.BLANK;
        if (sides == Sides.ROWS && carry == Carry.BLANK) carry = Carry.DASH;
        DeviceStyle device = any(r, DeviceStyle.values());
        boolean marks = carry == Carry.DASH || carry == Carry.DITTO || carry == Carry.JOINED || list;
        if (device == DeviceStyle.RATING_ONLY && (!marks || numbers == Numbers.ONCE)) device = DeviceStyle.TWO_COLUMNS;
        PageTurn turn = any(r, PageTurn.values());
        int panels = turn == PageTurn.LARGE_SHEET ? 2 + r.nextInt(5) : 1;
        return new SampleLayout(
                sides,
                numbers,
                carry,
                device,
                any(r, LoadStyle.values()),
                ruling,
                any(r, HeaderStyle.values()),
                r.nextInt(3) > 0 ? HeaderPlace.ABOVE : any(r, HeaderPlace.values()),
                any(r, TextStyle.values()),
                turn,
                any(r, Words.values()),
                panels,
                r.nextInt(3) == 0,
                r.nextInt(3) == 0,
                ways && r.nextBoolean() || r.nextInt(6) == 0,
                r.nextInt(6) == 0,
                r.nextInt(3) == 0,
                turn == PageTurn.LARGE_SHEET || r.nextInt(4) == 0,
                r.nextInt(3) == 0,
                r.nextBoolean(),
                r.nextBoolean(),
                r.nextInt(8) == 0,
                r.nextInt(8) == 0,
                r.nextInt(8) == 0,
                r.nextInt(10) == 0 && panels == 1,
                any(r, new String[] {"Helvetica", "Times-Roman", "Courier"}),
                turn == PageTurn.LARGE_SHEET ? 5 + 4 * r.nextDouble() : 6 + 2.5 * r.nextDouble());
    }

    private static <T> T any(Random r, T[] of) {
        return of[r.nextInt(of.length)];
    }
}
