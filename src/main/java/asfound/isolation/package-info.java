/**
 * Which devices part an equipment from every source, by the drawings and as found, and whether the drawn ones can be
 * believed. {@code AGREES} means that paper and survey agree, never that the equipment is dead.
 *
 * <p><b>The physical reading.</b> Conductors conduct both ways. A feeder and a tie let supply pass back where their far end
 * is held live by another source: solar on a panel feeds back into the board above it, and a panel traced to two boards makes
 * each of them live from the other. Inputs of transfer switches and UPSs never pass back. Drawn supplies that drawings
 * dispute are alternatives: the points drawn lead no supply back through one of them. One that was traced does pass back,
 * and an untraced one may: it proves nothing, and what hangs on it is unproven. Things that hang on the load side of one device
 * stay joined when it is open. Equipment that nothing feeds, or whose supply leads only round in a ring, may be live. In a
 * radial building all this comes to the one device above.
 *
 * <p><b>What fails and what is unproven.</b> With the drawn points open, a way from a source fails the drawing where it leads
 * over traced connections, or over drawn ones in the direction drawn that nothing disproves (without a traced deviation there
 * is none such, since the points part every drawn way). Supply led back over a connection that nobody traced, and ways over
 * stale or conflicting rows, leave it unproven. Where nothing drawn parts an equipment, it is unproven until the way is
 * traced, and then it fails.
 *
 * <p><b>How it is fast.</b> {@code Terrain} numbers everything once; {@code SupplyGraph} is one view of it; {@code
 * Dominators} answers wherever one device does; {@code Ways} leaves out what can be on no way from a source; {@code Flow}
 * searches outwards from the equipment in meshed parts only; {@code Remaining} and {@code Darkness} look only at what leads
 * to it or hangs below its points. {@code Judge} opens the points, {@code Outcome} decides, {@code Reasons} says why.
 */
package asfound.isolation;
