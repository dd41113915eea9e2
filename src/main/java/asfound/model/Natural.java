package asfound.model;

import java.util.Comparator;

/** The order in which a person expects names: {@code LP-2} before {@code LP-10}. */
public final class Natural {

    public static final Comparator<String> ORDER = Natural::compare;

    private Natural() {}

    private static int compare(String a, String b) {
        int i = 0, j = 0;
        while (i < a.length() && j < b.length()) {
            if (isDigit(a.charAt(i)) && isDigit(b.charAt(j))) {
                int startA = i, startB = j;
                while (i < a.length() && isDigit(a.charAt(i))) i++;
                while (j < b.length() && isDigit(b.charAt(j))) j++;
                int byNumber = compareNumbers(a, startA, i, b, startB, j);
                if (byNumber != 0) return byNumber;
            } else {
                int byChar = Character.compare(a.charAt(i++), b.charAt(j++));
                if (byChar != 0) return byChar;
            }
        }
        int byRest = Integer.compare(a.length() - i, b.length() - j);
        return byRest != 0 ? byRest : a.compareTo(b);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Two runs of digits of any length, by value. */
    private static int compareNumbers(String a, int startA, int endA, String b, int startB, int endB) {
        int i = pastZeros(a, startA, endA), j = pastZeros(b, startB, endB);
        int byLength = Integer.compare(endA - i, endB - j);
        if (byLength != 0) return byLength;
        for (; i < endA; i++, j++) {
            int byDigit = Character.compare(a.charAt(i), b.charAt(j));
            if (byDigit != 0) return byDigit;
        }
        return 0;
    }

    private static int pastZeros(String digits, int start, int end) {
        int i = start;
        while (i < end - 1 && digits.charAt(i) == '0') i++;
        return i;
    }
}
