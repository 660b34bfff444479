/** The workshop: sets that are prepared, results that are gathered, the report, and the sheet for watching a demonstration. */
package hobside.screen.workshop;
