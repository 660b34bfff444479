/** The running total: the pot's figures at the start and after each change, their spread, their cost, and who deserves the credit. */
package hobside.ledger;
