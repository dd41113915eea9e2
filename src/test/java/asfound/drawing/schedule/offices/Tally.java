package asfound.drawing.schedule.offices;

import java.util.Map;

/** How many circuits and header values of some sheets were read as printed. */
final class Tally {

    private int printed, read, right, values, rightValues, invented;

    void circuits(Map<Integer, String> want, Map<Integer, String> got) {
        printed += want.size();
        read += got.size();
        right += (int) want.entrySet().stream()
                .filter(e -> e.getValue().equals(got.get(e.getKey())))
                .count();
    }

    void header(boolean isRight) {
        values++;
        if (isRight) rightValues++;
    }

    /** A directory that is not on the sheet. */
    void invented() {
        invented++;
    }

    void add(Tally other) {
        printed += other.printed;
        read += other.read;
        right += other.right;
        values += other.values;
        rightValues += other.rightValues;
        invented += other.invented;
    }

    /** The harmonic mean of the share of the read that is right and the share of the printed that was read. */
    double f1() {
        return printed + read == 0 ? 1 : 2.0 * right / (printed + read);
    }

    double headers() {
        return values == 0 ? 1 : (double) rightValues / values;
    }

    int inventedDirectories() {
        return invented;
    }
}
