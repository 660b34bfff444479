/** The foods, the sums and the units held against published tables; each table names its source and edition in its first line. */
package hobside.published;
