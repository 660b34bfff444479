package hobside.file;

/** What a kitchen keeps of the user's own beside the saved demos, and where. */
public enum Own {
    FOODS("foods/own", ".json"),
    PACK("foods/own", ".pack"),
    PRICES("foods/own/prices", ".json"),
    DISH("foods/own/dishes", ".json");

    private final String folder;
    private final String ending;

    Own(String folder, String ending) {
        this.folder = folder;
        this.ending = ending;
    }

    String folder() {
        return folder;
    }

    /** The place of a file of this name, from the kitchen folder on. */
    public String file(String name) {
        return folder + "/" + name + ending;
    }
}
