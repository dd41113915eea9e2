/**
 * The supply of the building as one network: every equipment, device and connection once, each connection with its
 * standing between paper and survey. As drawn and as found are two views of it.
 */
package asfound.network;
