package asfound.finding;

import java.util.List;

/**
 * The rating, poles, phase or voltage seen on a device differs from the drawing. A conductor named on one-line or
 * survey that its protection does not protect is told here too.
 */
public record DeviceDiffers(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "device-differs",
            "The rating, poles, phase or voltage seen on a device differs from the drawing.",
            "Protection and fault studies rest on what is drawn; a device of other poles or phase is not the one that the drawing means.",
            "Look at the device again; then correct the drawing, or have an engineer look at the protection.",
            List.of(
                    "NFPA 70-2020 240.4(B), 240.4(D), 240.6(A) and Table 310.16 for conductors against their protection",
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current"),
            new Guide.Example(List.of("LP-1/1 20A RECEPT RM 101"), List.of("LP-1/1 feeds Recept rm 101 [30A]")),
            new Guide.NearMiss(
                    "The rating seen is the one drawn.",
                    new Guide.Example(
                            List.of("LP-1/1 20A RECEPT RM 101"), List.of("LP-1/1 feeds Recept rm 101 [20A]"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }
}
