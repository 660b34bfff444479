/** The Rehearse screen: the talk cue by cue with planned and taken times, the report of a run, and the runs side by side. */
package hobside.screen.rehearse;
