package asfound.recordset;

/** One thing of which a file or a record set can have too much, with its usual bound. README's table of limits is made of these. */
public enum Limit {
    FILE_MB("file-mb", 256, Unit.MEGABYTES, "size of one file, in MB of 1,048,576 bytes", "The file is not read."),
    PAGES(
            "pages",
            2_000,
            Unit.COUNT,
            "pages of one PDF",
            "The pages after it are not read; it says how many there are."),
    PAGE_SECONDS(
            "page-seconds", 20, Unit.SECONDS, "time for one page, in seconds", "The page is not read; the others are."),
    PAGE_OBJECTS(
            "page-objects",
            600_000,
            Unit.COUNT,
            "letters on one page, and ruled lines across or down it",
            "The page is not read; the others are."),
    FILE_SECONDS(
            "file-seconds",
            300,
            Unit.SECONDS,
            "time for one file, in seconds",
            "The pages or rows that were not reached are not read, or the file is not; a marked copy is its summary alone."),
    EXPANDED_MB(
            "expanded-mb",
            512,
            Unit.MEGABYTES,
            "what packed content of one file may unpack to (a stream of a PDF, all parts of a workbook, a marked copy), in MB",
            "The file is not read, or the page is not; a marked copy is its summary alone."),
    PARTS("parts", 5_000, Unit.COUNT, "files packed into one workbook", "The workbook is not read."),
    ROWS(
            "rows",
            2_000_000,
            Unit.COUNT,
            "rows of one table or sheet that are not blank",
            "The rows after it are not read."),
    COLUMNS("columns", 512, Unit.COUNT, "columns of one table", "The columns after it are not read."),
    FIELD_CHARS(
            "field-chars",
            32_000,
            Unit.COUNT,
            "characters of one field of a table",
            "The rest of the field is not read."),
    FIELD_LINES(
            "field-lines",
            100,
            Unit.COUNT,
            "lines of one quoted field of a table",
            "The quotation mark counts as not closed: its row is read as it stands, and so is each further one."),
    JOINED_CELLS("joined-cells", 50_000, Unit.COUNT, "blocks of joined cells on one sheet", "The sheet is not read."),
    LINE_MB("line-mb", 4, Unit.MEGABYTES, "length of one line of a table, in MB", "The rest of the line is not read."),
    SETTINGS_MB(
            "settings-mb",
            4,
            Unit.MEGABYTES,
            "size of `record.yaml` and of `accepted.yaml`, in MB",
            "The usual settings hold; nothing is accepted."),
    FILES(
            "files",
            100_000,
            Unit.COUNT,
            "files of one record set",
            "The files after it, in no certain order, are not read."),
    FOLDERS("folders", 40, Unit.COUNT, "folders within each other", "What lies deeper is not read."),
    REPORT_MB(
            "report-mb",
            512,
            Unit.MEGABYTES,
            "size of an `audit.json` given to `asfound since`, in MB",
            "Nothing is compared.");

    /** What one of the number that a user writes is. */
    private enum Unit {
        COUNT(1),
        SECONDS(1_000),
        MEGABYTES(1 << 20);

        private final long amount;

        Unit(long amount) {
            this.amount = amount;
        }
    }

    private final String inWords;
    private final int usual;
    private final Unit unit;
    private final String bounds;
    private final String beyond;

    Limit(String inWords, int usual, Unit unit, String bounds, String beyond) {
        this.inWords = inWords;
        this.usual = usual;
        this.unit = unit;
        this.bounds = bounds;
        this.beyond = beyond;
    }

    /** The name by which a user sets it. */
    public String inWords() {
        return inWords;
    }

    /** The usual bound, in the unit in which a user sets it. */
    public int usual() {
        return usual;
    }

    /** What it bounds, to stand after a number. */
    public String bounds() {
        return bounds;
    }

    /** What becomes of that which goes beyond, in a sentence. */
    public String beyond() {
        return beyond;
    }

    /** Bytes, milliseconds or a count. */
    long amount(long number) {
        return number * unit.amount;
    }

    /** What a user does about it, to stand within a sentence. */
    public String raise() {
        return "raise the limit with --allow " + inWords + "=NUMBER (usual: " + usual + ")";
    }
}
