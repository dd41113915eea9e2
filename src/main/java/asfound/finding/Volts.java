package asfound.finding;

import asfound.model.Voltage;

/** Whether two voltages are of one system. */
final class Volts {

    private Volts() {}

    /** As {@link Voltage#agreesWith}, and within 5 %: 460 V equipment stands on a 480 V system (common practice). */
    static boolean agree(Voltage a, Voltage b) {
        if (a.agreesWith(b)) return true;
        boolean one = near(a.lineToLine(), b.lineToLine())
                && (a.lineToNeutral().isEmpty()
                        || b.lineToNeutral().isEmpty()
                        || near(a.lineToNeutral().get(), b.lineToNeutral().get()));
        boolean neutralOfA = b.lineToNeutral().isEmpty()
                && a.lineToNeutral().filter(n -> near(n, b.lineToLine())).isPresent();
        boolean neutralOfB = a.lineToNeutral().isEmpty()
                && b.lineToNeutral().filter(n -> near(n, a.lineToLine())).isPresent();
        return one || neutralOfA || neutralOfB;
    }

    private static boolean near(int a, int b) {
        return Math.abs(a - b) <= 0.05 * Math.max(a, b);
    }
}
