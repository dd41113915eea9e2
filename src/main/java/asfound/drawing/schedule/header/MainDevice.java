package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.RatingText;
import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
import asfound.model.Directory.Mains;
import asfound.model.Stated;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a header says of a panel's mains and bus: a breaker and its rating, or lugs, which are rated as the bus is. */
final class MainDevice {

    private static final Pattern NO = Pattern.compile("no|none|n/?a|-", Pattern.CASE_INSENSITIVE);
    private static final Pattern NONE = Pattern.compile("none|n/?a", Pattern.CASE_INSENSITIVE);
    private static final Pattern LUGS =
            Pattern.compile("\\bM\\.?L\\.?O\\b|MAIN LUGS|LUGS ONLY", Pattern.CASE_INSENSITIVE);

    /** The weight of a value behind its label and a colon. */
    private static final int MARKED = 3;

    private final Sheet sheet;
    private Stated<Integer> bus = Stated.blank();
    private Stated<Integer> rating = Stated.blank();
    private Stated<Mains> mains = Stated.blank();

    MainDevice(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * The values of one region. Within it 'main lugs' overrides a rating; what another region says of mains (a legend below)
     * does not.
     */
    void labelled(List<Value> values) {
        boolean breaker = values.stream().anyMatch(MainDevice::isMarkedBreaker);
        if (mains.isBlank())
            for (Value v : values) if (isMain(v) && !(breaker && v.weight() < MARKED && isLugs(v))) main(v);
        for (Value v : values) if (v.field() == Field.MAINS_RATING) mainsRating(v);
    }

    /** {@code MAINS: 225A MCB}: what stands behind a label without a colon, as in a key, does not make lugs of it. */
    private static boolean isMarkedBreaker(Value v) {
        return v.field() == Field.MAIN
                && v.weight() >= MARKED
                && RatingText.mainOf(v.text()).isPresent()
                && !isLugs(v);
    }

    private static boolean isMain(Value v) {
        return switch (v.field()) {
            case MAIN, MAIN_LUGS -> true;
            case ISOLATOR -> RatingText.mains(v.text()).isPresent();
            default -> false;
        };
    }

    /** What stands behind a label for the bus. */
    void bus(Value v) {
        if (bus.isBlank()) bus = stated(RatingText.amps(v.text()), v.text(), v.box());
    }

    private void main(Value v) {
        if (isLugs(v)) {
            mains = Stated.of(Mains.LUGS, v.text(), sheet.place(v.box()));
            rating = Stated.blank();
            return;
        }
        if (v.field() == Field.MAIN_LUGS || areLugs() || RatingText.isOfIsolator(v.text())) return;
        Optional<Integer> amps = RatingText.mainOf(v.text()).or(() -> RatingText.amps(v.text()));
        if (amps.isPresent() && rating.isBlank()) rating = Stated.of(amps.get(), v.text(), sheet.place(v.box()));
        if (mains.isBlank() && (RatingText.mains(v.text()).isPresent() || amps.isPresent()))
            mains = Stated.of(Mains.BREAKER, v.text(), sheet.place(v.box()));
    }

    private static boolean isLugs(Value v) {
        // 'MLO    MAIN LUGS ONLY': a key tells what the letters mean, and nothing of this panel
        if (v.field() == Field.MAIN_LUGS && LUGS.matcher(v.text()).find()) return false;
        return v.field() == Field.MAIN_LUGS && !NO.matcher(v.text()).matches()
                || RatingText.mains(v.text()).filter(m -> m == Mains.LUGS).isPresent()
                || NONE.matcher(v.text()).matches();
    }

    private boolean areLugs() {
        return mains.value().filter(m -> m == Mains.LUGS).isPresent();
    }

    /** Where the main breaker has a rating of its own, or the mains are lugs, the mains are rated as the bus is. */
    private void mainsRating(Value v) {
        if (!areLugs() && rating.isBlank()) main(v);
        else bus(v);
    }

    /** What a text says of bus and mains without a label. */
    void loose(String text, Box box) {
        if (bus.isBlank()) bus = stated(RatingText.busOf(text), text, box);
        if (rating.isBlank() && !areLugs()) {
            rating = stated(RatingText.mainOf(text), text, box);
            if (!rating.isBlank() && mains.isBlank()) mains = Stated.of(Mains.BREAKER, text, sheet.place(box));
        }
        if (mains.isBlank() && LUGS.matcher(text).find()) mains = Stated.of(Mains.LUGS, text, sheet.place(box));
    }

    /** Whether nothing is known of what a field announces. */
    boolean isBlank(Field field) {
        return field == Field.BUS ? bus.isBlank() : rating.isBlank() && mains.isBlank();
    }

    /** Keeps as written what was not understood. */
    void unreadable(Value v) {
        Stated<Integer> asWritten = Stated.unreadable(v.text(), sheet.place(v.box()));
        if (v.field() == Field.BUS) bus = asWritten;
        else rating = asWritten;
    }

    /** Amperes. Where no bus is named, main lugs are rated as it is. */
    Stated<Integer> busA() {
        if (!bus.isBlank() || !areLugs()) return bus;
        return RatingText.lugsOf(mains.raw())
                .map(a -> new Stated<>(Optional.of(a), mains.raw(), mains.place()))
                .orElse(bus);
    }

    /** Amperes of the main device; blank where the mains are lugs. */
    Stated<Integer> ratingA() {
        return rating;
    }

    Stated<Mains> mains() {
        return mains;
    }

    private <T> Stated<T> stated(Optional<T> value, String text, Box box) {
        return value.map(v -> Stated.of(v, text, sheet.place(box))).orElse(Stated.blank());
    }
}
