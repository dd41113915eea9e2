/** Survey tables become {@link asfound.model.Observation}s, each graded by its method and its age. */
package asfound.survey;
