/**
 * Which names mean one thing. Designations are matched by structure, never by likeness alone: their digits must agree
 * exactly. Descriptions are compared as an electrician would: same, different or unclear.
 */
package asfound.names;
