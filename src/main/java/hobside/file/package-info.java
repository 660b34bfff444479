/**
 * Files: the kitchen folder, reading and writing JSON, and every fault of a file at once. The only package that knows Jackson
 * and disks. It returns values and prints nothing.
 */
package hobside.file;
