/** The narrated script: cues written from a demo and its ledger, figures rounded for speech, and one renderer a format. */
package hobside.talk;
