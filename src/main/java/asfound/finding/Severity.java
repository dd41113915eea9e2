package asfound.finding;

/** How bad a finding is, by the signal words of ANSI Z535, worst first. */
public enum Severity {
    /** Isolating by the drawing leaves the equipment live, on the evidence. */
    DANGER,
    /** It may leave it live, or the wrong equipment loses supply. */
    WARNING,
    /** Protection or rating is not what is drawn. */
    CAUTION,
    /** The record is untidy. */
    NOTICE;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
