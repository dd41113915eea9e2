/** One class for each command; nothing but wiring. */
package asfound.command;
