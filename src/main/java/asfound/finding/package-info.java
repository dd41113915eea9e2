/**
 * What differs between paper and building, said as the event that happened. Each rule lives with its finding in one small
 * file; {@code Rules} is the one list of them.
 */
package asfound.finding;
