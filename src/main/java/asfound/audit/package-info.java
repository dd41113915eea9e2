/** The whole chain in one place: a record set goes in, everything that is known about it comes out. */
package asfound.audit;
