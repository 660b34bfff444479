/** What all screens share: the demo being worked on with its ledger and its past, and the work it asks of the disk. */
package hobside.screen.desk;
