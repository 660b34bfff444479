package hobside.file;

/** A place in the tree, such as {@code foods[3].per100g}; written out only when a fault is found there. */
record Where(Where parent, String key, int index) {

    static final Where TOP = new Where(null, "", -1);

    Where field(String name) {
        return new Where(this, name, -1);
    }

    Where item(int number) {
        return new Where(this, "", number);
    }

    String written() {
        if (parent == null) {
            return "";
        }
        String before = parent.written();
        if (index >= 0) {
            return before + "[" + index + "]";
        }
        String name = Shown.of(key);
        return before.isEmpty() ? name : before + "." + name;
    }
}
