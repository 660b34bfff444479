/** Whether a talk can be said and understood: sentences, syllables, grades, pace and plainer words. Words in, figures out; no file, no clock. */
package hobside.talk.plain;
