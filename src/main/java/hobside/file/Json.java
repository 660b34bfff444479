package hobside.file;

import java.util.Arrays;
import java.util.List;

/** A JSON value that remembers its line. */
public sealed interface Json {

    int line();

    /** What was found, for a message: a text in quotes, a number as written, else the kind of thing. */
    String shown();

    /** One key of an object with its value. */
    record Entry(String key, int line, Json value) {}

    /**
     * An object; its entries in the order of the file, no key twice. Objects are small: a walk over the hash codes of the keys is
     * quicker than a map, above all before the code is compiled.
     */
    final class Obj implements Json {

        private final int line;
        private Entry[] entries = new Entry[8];
        private int[] hashes = new int[8];
        private int size;

        Obj(int line) {
            this.line = line;
        }

        void add(Entry entry) {
            if (size == hashes.length) {
                entries = Arrays.copyOf(entries, size * 2);
                hashes = Arrays.copyOf(hashes, size * 2);
            }
            hashes[size] = entry.key().hashCode();
            entries[size++] = entry;
        }

        /** The value of a key; null when there is none. */
        public Json find(String key) {
            int hash = key.hashCode();
            for (int i = 0; i < size; i++) {
                if (hashes[i] == hash && entries[i].key().equals(key)) {
                    return entries[i].value();
                }
            }
            return null;
        }

        public List<Entry> entries() {
            return Arrays.asList(entries).subList(0, size);
        }

        public int size() {
            return size;
        }

        @Override
        public int line() {
            return line;
        }

        @Override
        public String shown() {
            return "an object in { }";
        }
    }

    /** A list in the order of the file. */
    record Arr(int line, List<Json> items) implements Json {

        @Override
        public String shown() {
            return items.isEmpty() ? "an empty list" : "a list of " + items.size();
        }
    }

    /** A text, escapes resolved. */
    record Text(int line, String value) implements Json {

        @Override
        public String shown() {
            return Shown.quoted(value);
        }
    }

    /** A number; infinite when it is too large for a double. */
    record Num(int line, double value, String written) implements Json {

        @Override
        public String shown() {
            return Shown.of(written);
        }
    }

    /** One of the words true, false and null. */
    record Word(int line, String written) implements Json {

        @Override
        public String shown() {
            return written;
        }
    }
}
