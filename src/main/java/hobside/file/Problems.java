package hobside.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the faults of one file while it is read. The first fifty are kept; of the rest it is said how many they are. */
public final class Problems {

    private static final int MOST = 50;

    private final String file;
    private final List<InputProblem> kept = new ArrayList<>();
    private int count;

    public Problems(String file) {
        this.file = file;
    }

    /** A fault at a place in the tree. */
    void add(Where where, int line, String found, Wanted wanted) {
        count++;
        if (kept.size() < MOST) {
            kept.add(new InputProblem(file, line, where.written(), found, wanted.expected(), wanted.remedy()));
        }
    }

    /** A fault in a column or field of one line. */
    public void add(int line, String field, String found, Wanted wanted) {
        add(Where.TOP.field(field), line, found, wanted);
    }

    /** A fault of the file as a whole. */
    public void add(int line, String found, Wanted wanted) {
        add(Where.TOP, line, found, wanted);
    }

    public String file() {
        return file;
    }

    public int count() {
        return count;
    }

    public boolean isEmpty() {
        return count == 0;
    }

    public List<InputProblem> all() {
        List<InputProblem> all = new ArrayList<>(kept);
        all.sort(Comparator.comparingInt(InputProblem::line));
        if (count > kept.size()) {
            all.add(new InputProblem(file, 0, "", count - kept.size() + " more faults", "none",
                    "correct these first, then read the file again"));
        }
        return all;
    }
}
