package hobside.file;

/**
 * One fault of a file: where it stands, what was found there, what was expected, and what to do about it.
 *
 * @param line the line in the file, counted from 1; 0 when the fault is not on one line
 * @param field the path of the field, such as {@code foods[3].per100g.FAT}; empty when the fault is not in a field
 * @param found the value, shortened to 60 characters and with control characters made visible
 */
public record InputProblem(String file, int line, String field, String found, String expected, String remedy) {

    /** The whole fault on one line, ready to be shown. */
    public String written() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
        }
        text.append(": ");
        if (!field.isEmpty()) {
            text.append(field).append(": ");
        }
        text.append("found ").append(found).append("; expected ").append(expected);
        return remedy.isEmpty() ? text.toString() : text.append("; ").append(remedy).toString();
    }
}
