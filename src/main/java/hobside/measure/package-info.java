/** Quantities that cannot be mixed up: weights, volumes, money, ranges, and the amounts that cooks write. Knows nothing of food. */
package hobside.measure;
