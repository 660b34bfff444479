package hobside.practice;

import hobside.practice.rubric.Feedback;
import hobside.practice.rubric.Mark;
import hobside.practice.rubric.Point;
import java.util.List;
import java.util.Map;

/** The points of an explanation: which are asked for on each level, and what their marks come to. */
public final class Points {

    public static final String YES = "yes";
    public static final String PART = "part";
    public static final String NO = "no";

    private static final List<String> ALL = List.of("what", "why", "how-much", "not", "safety", "plain", "respect", "length");

    /** How many of them are asked for on the levels from 1 to 5. */
    private static final int[] ASKED = {2, 3, 4, 5, 8};

    private Points() {}

    /** In the order in which a change is told: first what and why, last how it is said. */
    public static List<String> asked(int level) {
        return ALL.subList(0, ASKED[level - 1]);
    }

    /** Those of an answer in own words: whether it answers, is true, kind and plain. */
    private static final List<String> OF_AN_ANSWER = List.of("what", "true", "plain", "respect", "length");

    /** The points that an exercise in own words is scored by. */
    public static List<String> asked(Label label) {
        return label.kind() == Kind.EXPLAIN ? asked(label.level()) : label.kind() == Kind.ANSWER ? OF_AN_ANSWER : ALL;
    }

    public static List<String> all() {
        return ALL;
    }

    private static final String TRUE = "true";

    /** An answer with something untrue in it is never known, however much else is there: our own choice. */
    private static final double UNTRUE = 0.4;

    /** The share of the points that are there, half ones counted half; points that do not apply or cannot be told count nowhere. */
    public static double score(List<String> asked, Map<String, String> marks) {
        double got = 0;
        int counted = 0;
        for (String point : asked) {
            String mark = marks.getOrDefault(point, "");
            if (isTold(mark)) {
                counted++;
                got += mark.equals(YES) ? 1 : mark.equals(PART) ? 0.5 : 0;
            }
        }
        double score = counted == 0 ? 0 : got / counted;
        return NO.equals(marks.get(TRUE)) ? Math.min(score, UNTRUE) : score;
    }

    private static boolean isTold(String mark) {
        return mark.equals(YES) || mark.equals(PART) || mark.equals(NO);
    }

    /** The first point that is asked for and is not there, as the name of a misunderstanding: {@code point-why}; empty when all are. */
    static String missing(List<String> asked, Map<String, String> marks) {
        if (NO.equals(marks.get(TRUE))) {
            return MISSING + TRUE;
        }
        for (String point : asked) {
            if (marks.getOrDefault(point, "").equals(NO)) {
                return MISSING + point;
            }
        }
        return "";
    }

    /** Stands in front of the point that was left out. */
    static final String MISSING = "point-";

    /**
     * Whether these points can be asked for in own words: the rubric must not mark down the answer that the program has ready. Where it
     * does, because it cannot follow that answer, choosing is fairer than writing. How it is worded and how long it is does not count.
     */
    public static boolean isFair(Feedback ofTheModel, List<String> asked) {
        return ofTheModel.points().stream().filter(judged -> judged.point() != Point.PLAIN && judged.point() != Point.LENGTH)
                .noneMatch(judged -> judged.mark() == Mark.NO && asked.contains(judged.point().word()));
    }

    /** The result of an explanation or a reply with these marks. */
    public static Attempt.Result result(List<String> asked, Map<String, String> marks, String words) {
        return new Attempt.Result(score(asked, marks), missing(asked, marks), marks, words);
    }
}
