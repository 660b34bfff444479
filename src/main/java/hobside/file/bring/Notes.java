package hobside.file.bring;

import hobside.file.InputProblem;
import hobside.file.Problems;
import hobside.file.Shown;
import hobside.file.Wanted;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Collects a review while a table is read. */
final class Notes {

    /** More than this nobody reads. */
    static final int MOST = 500;

    private final Problems problems;
    private final List<String> told = new ArrayList<>();
    private final List<Review.Noted> noted = new ArrayList<>();
    private final Map<Review.Mark, Integer> counts = new HashMap<>();
    private int read;
    private int offered;
    private int leftOut;

    Notes(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    void tell(String sentence) {
        told.add(sentence);
    }

    void note(int line, String title, Review.Mark mark, String why) {
        counts.merge(mark, 1, Integer::sum);
        if (noted.size() < MOST) {
            noted.add(new Review.Noted(line, Shown.of(title), mark, why));
        }
    }

    void fault(int line, String field, String found, Wanted wanted) {
        problems.add(line, field, found, wanted);
    }

    void readOne() {
        read++;
    }

    int readRows() {
        return read;
    }

    void offerOne() {
        offered++;
    }

    void leaveOutOne() {
        leftOut++;
    }

    Review review(Review.Goods goods) {
        int there = counts.getOrDefault(Review.Mark.ALREADY_THERE, 0);
        List<InputProblem> faults = problems.all();
        return new Review(problems.file(), goods, told, noted, faults, new Review.Counts(read, offered,
                counts.getOrDefault(Review.Mark.DOUBTFUL, 0), counts.getOrDefault(Review.Mark.SAME_NAME, 0), there, leftOut));
    }
}
