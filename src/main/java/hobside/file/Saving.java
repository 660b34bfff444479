package hobside.file;

/** What came of a save. */
public sealed interface Saving {

    /** A sentence for the user. */
    String said();

    /** The same with more to say when it is on the disk. */
    default Saving adding(String more) {
        return this instanceof Saved saved ? new Saved(saved.version, saved.file, saved.said + more) : this;
    }

    /** It is on the disk, whole. The version is to be handed in with the next save. */
    record Saved(Version version, String file, String said) implements Saving {

        static String plainly(String file) {
            return "Saved in " + file + ".";
        }

        /** It had to go beside the place that was meant, and the sentence says why. */
        public boolean isElsewhere() {
            return !said.equals(plainly(file));
        }
    }

    /** It is not on the disk; the old file is as it was. */
    record NotSaved(String said) implements Saving {}
}
