package asfound.finding;

import java.time.LocalDate;

/**
 * A finding that the user accepted: listed apart, never dropped.
 *
 * @param reason why it may stay as it is
 * @param by who accepted it
 */
public record Accepted(Finding finding, String reason, String by, LocalDate date) {}
