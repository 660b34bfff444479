/** The open rubric by which an explanation is judged: what was found, what was missing, and how it was judged. Pure; it knows words, not meaning. */
package hobside.practice.rubric;
