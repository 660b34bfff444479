/**
 * Published yardsticks as data: energy factors, daily guides, claims, front-of-pack bands and cautions, each with its country or
 * body, source, date and how sure we are of it. Checks only; no figure of any law stands in the code, and no disk is known here.
 */
package hobside.guide;
