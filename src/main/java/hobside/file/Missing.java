package hobside.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Keeps account of what is left out of a damaged file, and says it. */
final class Missing {

    private static final int MOST_REASONS = 12;

    private final Parts parts;
    private final Map<Salvage.Path, TreeSet<Integer>> rows = new LinkedHashMap<>();
    private final Map<Salvage.Path, Boolean> gaps = new LinkedHashMap<>();
    private final List<String> others = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();
    private String end = "";

    Missing(Parts parts) {
        this.parts = parts;
    }

    boolean isNone() {
        return rows.isEmpty() && others.isEmpty() && end.isEmpty();
    }

    /** The file goes no further than this line, or cannot be understood behind it. */
    void cut(int line, boolean atEnd) {
        end = atEnd ? "The file ends in the middle, at line " + line + ": what stood behind that is missing."
                : "From line " + line + " on the file cannot be understood: what stood there is missing.";
    }

    /** A row or a part is taken out because of this fault; a gap is damage to whole lines. */
    void out(Salvage.Path path, InputProblem fault, boolean gap) {
        if (path.at(path.size() - 1) instanceof Integer) {
            Salvage.Path list = path.first(path.size() - 1);
            rows.computeIfAbsent(list, each -> new TreeSet<>()).add(fault.line());
            gaps.merge(list, gap, Boolean::logicalOr);
        } else {
            others.add(gap ? "Line " + fault.line() + " and what belongs to it in \"" + place(path) + "\" could not be read." : "\"" + String.join(".", names(path))
                    + "\" could not be read (line " + fault.line() + ").");
        }
        if (!gap && reasons.size() < MOST_REASONS) {
            reasons.add(fault.written());
        }
    }

    private static List<String> names(Salvage.Path path) {
        return path.steps().stream().map(String::valueOf).toList();
    }

    private static String place(Salvage.Path path) {
        return path.size() > 1 ? String.join(".", names(path.first(path.size() - 1))) : "the file";
    }

    /** What is missing beside what is in this tree: how much of each list, then the rest, then why. */
    List<String> told(Json tree) {
        List<String> told = new ArrayList<>();
        rows.forEach((list, lines) -> told.add(row(list, lines, list.in(tree) instanceof Json.Arr kept ? kept.items().size() : 0)));
        told.addAll(others);
        if (!end.isEmpty()) {
            told.add(end);
        }
        told.addAll(reasons);
        return told;
    }

    /** Where whole lines are damaged nobody can know how many rows they were. */
    private String row(Salvage.Path list, Set<Integer> lines, int kept) {
        String where = lines.size() == 1 ? "line " + lines.iterator().next() : "lines " + String.join(", ", lines.stream().map(String::valueOf).toList());
        return gaps.get(list) ? "Of the " + parts.rows(list) + " " + kept + " could be read; what stood at " + where + " could not."
                : lines.size() + " of " + (kept + lines.size()) + " " + parts.rows(list) + " could not be read (" + where + ").";
    }
}
