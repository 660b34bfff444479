/** What helps when the audience asks: what if, what is missing, and what was prepared for a question. They stand over the live screen and know nothing of it. */
package hobside.screen.asked;
