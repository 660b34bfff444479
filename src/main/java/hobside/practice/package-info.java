/** Exercises in explaining a change, drawn from dishes by a seed and answered by the ledger; what trainees did, and what a workshop shows. No disk, no clock. */
package hobside.practice;
