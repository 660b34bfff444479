/** Practice: who practises, exercises, what is said back, how far one has come. */
package hobside.screen.practice;
