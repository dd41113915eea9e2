package asfound.isolation;

import java.util.Arrays;

/** A growing list of plain integers. */
final class Ints {

    private int[] values = new int[16];
    private int size;

    void add(int value) {
        if (size == values.length) values = Arrays.copyOf(values, size * 2);
        values[size++] = value;
    }

    int get(int index) {
        return values[index];
    }

    void set(int index, int value) {
        values[index] = value;
    }

    int size() {
        return size;
    }

    boolean isEmpty() {
        return size == 0;
    }

    void clear() {
        size = 0;
    }

    int[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
