/** Exercises of explaining. Pure: no disk, clock or terminal. */
package hobside.practice;
