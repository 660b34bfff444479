/** What happens when a talk is run, rehearsed or live: its happenings, where one stands, what was measured, and what to drop when late. */
package hobside.stage.run;
