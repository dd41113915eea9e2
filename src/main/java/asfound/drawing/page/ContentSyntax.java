package asfound.drawing.page;

/**
 * Follows the strings and lists of a page's content (ISO 32000-1, 7.3) as far as it takes to say whether they end. One
 * that does not takes all that follows with it, and readers of PDF say nothing of it.
 */
final class ContentSyntax {

    private enum In {
        CODE,
        TEXT,
        ESCAPE,
        HEX,
        REMARK,
        PICTURE
    }

    private In in = In.CODE;
    private int brackets;
    private int lists;
    private int dictionaries;
    /** The last angle bracket has had its use. */
    private boolean bracketUsed;

    private int last = ' ';
    private int before = ' ';
    private int beyond = ' ';

    void add(byte[] bytes, int length) {
        for (int i = 0; i < length; i++) add(bytes[i] & 0xFF);
    }

    private void add(int c) {
        switch (in) {
            case CODE -> code(c);
            case TEXT -> text(c);
            case ESCAPE -> in = In.TEXT;
            case HEX -> hex(c);
            case REMARK -> in = c == '\n' || c == '\r' ? In.CODE : In.REMARK;
            case PICTURE -> {
                // the bytes of a picture within the content stand between ID and EI
                if (isBlank(c) && last == 'I' && before == 'E' && isBlank(beyond)) in = In.CODE;
            }
        }
        beyond = before;
        before = last;
        last = c;
    }

    private void code(int c) {
        switch (c) {
            case '(' -> {
                in = In.TEXT;
                brackets = 1;
            }
            case '<' -> in = In.HEX;
            case '%' -> in = In.REMARK;
            case '[' -> lists++;
            case ']' -> lists = Math.max(0, lists - 1);
            case '>' -> {
                boolean pair = last == '>' && !bracketUsed;
                if (pair) dictionaries = Math.max(0, dictionaries - 1);
                bracketUsed = pair; // a third one begins anew
            }
            default -> {
                if (last == 'D' && before == 'I' && isBlank(c) && isBlank(beyond)) in = In.PICTURE;
            }
        }
    }

    private void hex(int c) {
        if (c != '>' && c != '<') return;
        in = In.CODE;
        if (c == '<' && last == '<') dictionaries++;
        bracketUsed = c == '>';
    }

    private void text(int c) {
        if (c == '\\') in = In.ESCAPE;
        else if (c == '(') brackets++;
        else if (c == ')' && --brackets == 0) in = In.CODE;
    }

    private static boolean isBlank(int c) {
        return c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f' || c == 0;
    }

    /** False where a string, a list, a dictionary or a picture is still open. */
    boolean isClosed() {
        return (in == In.CODE || in == In.REMARK) && lists == 0 && dictionaries == 0;
    }
}
