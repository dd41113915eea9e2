/** Sources become what the paper says: directories of panels, feeders and equipment of one-lines. */
package asfound.drawing;
