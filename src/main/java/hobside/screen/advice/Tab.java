package hobside.screen.advice;

/** The pages of advice. */
enum Tab {
    NEXT("next"),
    BEST("best plan"),
    FRONTIER("frontier"),
    CREDIT("credit"),
    MYTHS("no help");

    private final String word;

    Tab(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    Tab step(int by) {
        return values()[Math.floorMod(ordinal() + by, values().length)];
    }
}
