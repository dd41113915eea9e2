package asfound.drawing.schedule.text;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A device written behind what it feeds: {@code Range 40A 2P}, {@code Steam table - 30A double}.
 *
 * @param load what is fed
 * @param device as written
 */
public record DeviceInWords(String load, String device) {

    private static final Pattern BEHIND = Pattern.compile(
            "(.*\\p{L}.*?)[\\s,(–—-]+(\\d{1,3}\\s*A(?:MPS?)?(?:[\\s,/]*(?:[1-3]\\s*-?\\s*P(?:OLES?)?|(?:SINGLE|DOUBLE|TRIPLE)(?:[\\s-]*POLE)?))?)\\)?",
            Pattern.CASE_INSENSITIVE);

    public static Optional<DeviceInWords> of(String text) {
        if (!Texts.hasFigure(text)) return Optional.empty();
        Matcher m = BEHIND.matcher(text);
        return m.matches() && DeviceText.parse(m.group(2)).isPresent()
                ? Optional.of(new DeviceInWords(m.group(1).strip(), m.group(2)))
                : Optional.empty();
    }
}
