/** How far the traced part speaks for the rest, and what to trace next. No bound ever replaces a trace for isolation. */
package asfound.trust;
