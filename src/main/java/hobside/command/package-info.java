/** The same work without a screen: for scripts, for pipes, and for checks from outside. */
package hobside.command;
