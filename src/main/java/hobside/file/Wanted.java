package hobside.file;

/** What a field should have held, and what to do when it does not. */
public record Wanted(String expected, String remedy) {

    public static Wanted of(String expected, String remedy) {
        return new Wanted(expected, remedy);
    }
}
