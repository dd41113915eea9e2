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
                String runA = withoutZeros(a.substring(startA, i)), runB = withoutZeros(b.substring(startB, j));
                int byLength = Integer.compare(runA.length(), runB.length());
                if (byLength != 0) return byLength;
                int byDigits = runA.compareTo(runB);
                if (byDigits != 0) return byDigits;
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

    private static String withoutZeros(String digits) {
        return digits.replaceFirst("^0+(?=.)", "");
    }
}
