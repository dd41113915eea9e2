/**
 * The few plain records that every other package speaks: where a value was read, what a drawing states, what a surveyor
 * saw. They hold no opinion: nothing here knows whether paper and building agree.
 */
package asfound.model;
