/**
 * Bringing in what others have written: tables of foods, published tables, price lists and recipes. Every importer turns bytes
 * into a {@link hobside.file.bring.Review}; nothing is written before {@link hobside.file.bring.Taking} is asked to. The way
 * back – tables and recipes for others – is here too. It may use {@code hobside.file}, which knows nothing of it.
 */
package hobside.file.bring;
