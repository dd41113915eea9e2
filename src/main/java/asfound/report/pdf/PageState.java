package asfound.report.pdf;

import asfound.isolation.Verdict.Standing;

/** Why a page of a drawing may not be relied on, worst first, and what its stamp says. */
public enum PageState {
    FAILS(
            "DO NOT USE FOR ISOLATION",
            "drawing and building differ.",
            "isolating by this drawing leaves equipment live, on the evidence.",
            "not for isolation"),
    UNPROVEN(
            "NOT PROVEN FOR ISOLATION",
            "not traced.",
            "the survey does not prove what this drawing shows.",
            "not proven for isolation"),
    /** Nothing of it was audited: a page without a mark would look as if nothing were wrong with it. */
    NOT_READ(
            "NOT READ: DO NOT RELY ON IT",
            "",
            "this page could not be read, and nothing of it was audited.",
            "not read");

    final String title;
    /** Said after the names of equipment. */
    final String ofEquipment;

    final String comment;
    /** In a list of pages. */
    final String brief;

    PageState(String title, String ofEquipment, String comment, String brief) {
        this.title = title;
        this.ofEquipment = ofEquipment;
        this.comment = comment;
        this.brief = brief;
    }

    /** Of a verdict that keeps the page from being used. */
    static PageState of(Standing standing) {
        return switch (standing) {
            case FAILS -> FAILS;
            case UNPROVEN -> UNPROVEN;
            case AGREES -> throw new IllegalArgumentException("a page that agrees bears no stamp");
        };
    }
}
