/**
 * The supply of the building as one network: every equipment, device and connection once, each connection with its
 * standing between paper and survey. As drawn and as found are two views of it.
 *
 * <p>{@code Paper} gathers what drawings claim, {@code Disputes} says where they disagree, {@code DrawnConnections} joins
 * claims that mean one connection, {@code Tracer} lays the survey beside them. Readings that are not plain: a drawing that
 * gives no device says the same as one that does; a source is never fed, so a device drawn or traced towards one is a backfed
 * device; a device found behind a feeder is in series with the supply's own one where there is just one; a row without a
 * readable date at modified equipment is stale; a row {@code fed by} without a circuit bears on the drawn connection and
 * traces no device; a device drawn to feed two things was not seen to feed another when one of them was traced.
 */
package asfound.network;
