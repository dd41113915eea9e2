package asfound.drawing.schedule.sheet;

/** A name for a directory whose sheet prints none. */
public final class Names {

    private Names() {}

    /** The file's name without folders and ending. */
    public static String ofFile(String file) {
        String name = file.substring(file.lastIndexOf('/') + 1);
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
