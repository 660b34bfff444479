/** Foods: composition, parts, measures, prices, and what cooking does to their fat. No dish is known here. */
package hobside.food;
