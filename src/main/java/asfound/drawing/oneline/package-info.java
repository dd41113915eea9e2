/** One-line exports: tables of feeders and of equipment become {@link asfound.model.OneLine}. */
package asfound.drawing.oneline;
