package hobside.command;

/** How a command ended, as the number the shell gets. */
public enum Exit {
    DONE(0),
    NO_ANSWER(1),
    BAD_INPUT(2);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    public int code() {
        return code;
    }
}
