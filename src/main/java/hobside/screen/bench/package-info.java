/** The Bench: the dish on one side, the plan as a ledger on the other, and the totals below. The screen that everything starts from. */
package hobside.screen.bench;
