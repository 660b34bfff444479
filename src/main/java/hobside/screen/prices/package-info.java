/** Price lists: which one is in use, taking prices in a shop, comparing two lists, and what is paid at the till. */
package hobside.screen.prices;
