/** Holds typed words against the ledger and the published rules. Pure, and quick enough to run while somebody types. */
package hobside.talk.check;
