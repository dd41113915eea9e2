package asfound.drawing.page;

/** Puts numbers of things in the order of the things, without a box around each number. */
final class Ordered {

    private Ordered() {}

    /** The order of two things, told by their numbers. */
    interface Order {
        int compare(int a, int b);
    }

    /** Sorts the first {@code n} numbers; what is equal stays as it stood. Quick where most stands in order already. */
    static void sort(int[] numbers, int n, Order order) {
        sort(numbers.clone(), numbers, 0, n, order);
    }

    /** Sorts what both hold from one place to another into the second. */
    private static void sort(int[] from, int[] into, int low, int high, Order order) {
        if (high - low < 2) return;
        int mid = (low + high) >>> 1;
        sort(into, from, low, mid, order);
        sort(into, from, mid, high, order);
        if (order.compare(from[mid - 1], from[mid]) <= 0) {
            System.arraycopy(from, low, into, low, high - low);
            return;
        }
        for (int i = low, a = low, b = mid; i < high; i++)
            into[i] = b >= high || a < mid && order.compare(from[a], from[b]) <= 0 ? from[a++] : from[b++];
    }
}
