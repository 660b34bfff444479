/** The words of a language: sentences with gaps, plurals and the writing of numbers. Knows nothing of food, disks or screens. */
package hobside.words;
