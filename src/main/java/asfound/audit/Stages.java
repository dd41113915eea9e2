package asfound.audit;

/** Hears how far an audit has come. */
@FunctionalInterface
public interface Stages {

    Stages SILENT = (stage, done, total) -> {};

    /**
     * @param stage what is being done, in the user's words
     * @param done how many are done
     * @param total of how many; 0 where it is not known
     */
    void at(String stage, int done, int total);
}
