/**
 * Which devices part an equipment from every source, by the drawings and as found, and whether the drawn ones can be
 * believed. {@code AGREES} means that paper and survey agree, never that the equipment is dead.
 */
package asfound.isolation;
