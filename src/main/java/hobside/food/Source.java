package hobside.food;

/** Where the figures of a record come from: a table with its release, and the number of the row. */
public record Source(String table, String number) {

    public static final Source OWN = new Source("own record", "");

    public String written() {
        return number.isEmpty() ? table : table + " no. " + number;
    }
}
