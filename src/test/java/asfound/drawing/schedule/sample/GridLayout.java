package asfound.drawing.schedule.sample;

import java.util.Random;

/** How an office might keep its schedules in a workbook or a text table: one choice on every axis. */
record GridLayout(
        Kind kind,
        Encoding encoding,
        Arrangement arrangement,
        int panels,
        Sides sides,
        Numbers numbers,
        Carry carry,
        DeviceStyle device,
        LoadStyle loads,
        HeaderStyle header,
        HeaderPlace headerPlace,
        HeadingStyle heading,
        Figures figures,
        Beside beside,
        TotalStyle totals,
        boolean wire,
        boolean phase,
        boolean type,
        boolean upper,
        boolean gaps,
        boolean indented,
        boolean titles,
        boolean spacers,
        boolean otherSheets,
        boolean hidden,
        boolean struck,
        boolean wrapped,
        boolean accents) {

    enum Kind {
        WORKBOOK,
        COMMA,
        SEMICOLON,
        TAB;

        char delimiter() {
            return this == SEMICOLON ? ';' : this == TAB ? '\t' : ',';
        }
    }

    enum Encoding {
        UTF8,
        UTF8_MARKED,
        UTF16_LITTLE,
        UTF16_BIG,
        WINDOWS
    }

    /** Where several panels stand. */
    enum Arrangement {
        ONE,
        STACKED,
        BESIDE,
        SHEETS,
        /** One table with a column that names the panel. */
        COMBINED
    }

    enum Sides {
        CENTRE,
        OUTSIDE,
        LEFT_OF_EACH,
        HALVES,
        /** A row for each position, every second one on the same phase. */
        ROWS,
        /** A row for each position, poles in neighbouring rows. */
        DOWN,
        ODD_THEN_EVEN,
        /** A row for each device. */
        LIST,
        /** A board: the way once, and its phases beside it. */
        WAYS,
        /** A board: {@code 1L1} in one cell. */
        WAY_LINES;

        boolean isBoard() {
            return this == WAYS || this == WAY_LINES;
        }

        int step() {
            return isBoard() || this == HALVES || this == DOWN ? 1 : 2;
        }
    }

    /** How the positions of a device with several poles are written. */
    enum Numbers {
        EACH,
        ONCE,
        /** In a list: the first one alone, the poles tell the others. */
        FIRST,
        COMMAS,
        COMMAS_SPACED,
        HYPHENS,
        SLASHES
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
        POLES_FIRST,
        WITH_UNITS,
        SLASH,
        SLASH_UNITS,
        A_DASH_P,
        A_SPACE_P,
        P_DASH_A,
        /** No poles written: marks, joined cells or the list of positions tell them. */
        RATING_ONLY;

        boolean isOneColumn() {
            return this == SLASH || this == SLASH_UNITS || this == A_DASH_P || this == A_SPACE_P || this == P_DASH_A;
        }
    }

    enum LoadStyle {
        NONE,
        VA_EACH,
        VA_SUM,
        KVA_EACH,
        W_EACH,
        VA_BY_PHASE,
        KVA_BY_PHASE,
        VA_BY_PHASE_AND_SUM;

        boolean isByPhase() {
            return name().contains("BY_PHASE");
        }

        boolean isKilo() {
            return name().startsWith("KVA");
        }
    }

    enum HeaderStyle {
        TWO_CELLS,
        TWO_CELLS_MARKED,
        ONE_CELL,
        JOINED,
        LABEL_OVER_VALUE,
        RUNNING
    }

    enum HeaderPlace {
        ABOVE,
        BELOW,
        RIGHT
    }

    enum HeadingStyle {
        ONE_ROW,
        TWO_ROWS,
        TWO_LINES,
        GROUPED
    }

    /** How a number is kept: as a number, as text, with a point and a zero, or as a formula with its last value. */
    enum Figures {
        NUMBERS,
        TEXTS,
        DECIMALS,
        FORMULAS
    }

    /** What stands in the cells to the right of the rows. */
    enum Beside {
        NOTHING,
        NOTES_HEADED,
        NOTES,
        NOTES_APART,
        KEYED_NOTES
    }

    enum TotalStyle {
        NONE,
        TWO_CELLS,
        ONE_CELL,
        UNDER_COLUMNS
    }

    static GridLayout random(Random r) {
        Kind kind = r.nextInt(5) < 3 ? Kind.WORKBOOK : any(r, new Kind[] {Kind.COMMA, Kind.SEMICOLON, Kind.TAB});
        boolean book = kind == Kind.WORKBOOK;
        Arrangement arrangement = r.nextBoolean() ? Arrangement.ONE : any(r, Arrangement.values());
        if (arrangement == Arrangement.SHEETS && !book) arrangement = Arrangement.STACKED;
        Sides sides = any(r, Sides.values());
        if (arrangement == Arrangement.COMBINED && !sides.isBoard())
            sides = any(r, new Sides[] {Sides.LIST, Sides.ROWS, Sides.DOWN});
        boolean list = sides == Sides.LIST;
        Numbers numbers = list
                ? any(r, new Numbers[] {
                    Numbers.FIRST, Numbers.COMMAS, Numbers.COMMAS_SPACED, Numbers.HYPHENS, Numbers.SLASHES
                })
                : sides.isBoard() || sides == Sides.ROWS || r.nextInt(3) > 0 ? Numbers.EACH : Numbers.ONCE;
        Carry carry = any(r, Carry.values());
        if (carry == Carry.JOINED && (!book || sides == Sides.ROWS)) carry = Carry.BLANK;
        if (sides == Sides.ROWS && carry == Carry.BLANK) carry = Carry.DASH;
        DeviceStyle device = any(r, DeviceStyle.values());
        boolean marks = carry == Carry.DASH || carry == Carry.DITTO || carry == Carry.JOINED || list;
        if (device == DeviceStyle.RATING_ONLY && (!marks || numbers == Numbers.ONCE || numbers == Numbers.FIRST))
            device = DeviceStyle.TWO_COLUMNS;
        int panels = arrangement == Arrangement.ONE ? 1 : 2 + r.nextInt(2);
        return new GridLayout(
                kind,
                any(r, Encoding.values()),
                arrangement,
                panels,
                sides,
                numbers,
                carry,
                device,
                any(r, LoadStyle.values()),
                any(r, HeaderStyle.values()),
                r.nextInt(3) > 0 ? HeaderPlace.ABOVE : any(r, HeaderPlace.values()),
                any(r, HeadingStyle.values()),
                r.nextBoolean() ? Figures.NUMBERS : any(r, Figures.values()),
                r.nextBoolean() ? Beside.NOTHING : any(r, Beside.values()),
                any(r, TotalStyle.values()),
                r.nextInt(3) == 0,
                r.nextInt(4) == 0,
                sides.isBoard() && r.nextBoolean() || r.nextInt(8) == 0,
                r.nextBoolean(),
                r.nextInt(5) == 0,
                r.nextInt(4) == 0,
                r.nextInt(3) == 0,
                r.nextInt(8) == 0,
                book && r.nextInt(3) == 0,
                book && r.nextInt(4) == 0,
                book && r.nextInt(8) == 0,
                r.nextInt(6) == 0,
                r.nextInt(4) == 0);
    }

    static <T> T any(Random r, T[] of) {
        return of[r.nextInt(of.length)];
    }
}
