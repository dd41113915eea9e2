/**
 * The one-line as a picture, drawn and found in one: the network is divided into sheets of a legible size, each sheet is
 * laid out in layers from its sources on, and every piece of it gets its place. Nothing here knows how it is painted.
 */
package asfound.report.picture;
