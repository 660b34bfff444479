package hobside.talk.check;

import hobside.guide.Cautions;
import hobside.guide.Citation;
import hobside.talk.Cue;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds the cautions that a demo needs and no cue says any more.
 *
 * <p>A cue that the program wrote for a caution bears its key; put in other words it still counts when a quarter of the content
 * words is left. Any other cue counts when it has at least half of them. Content words are words of four letters or more that are no
 * mere joining words. A cue that speaks of the same thing in quite other words is not recognised, and one that turns the meaning
 * round is not found out. Where the talk is not told in English, the key alone decides.
 */
final class CareCheck {

    private static final double HALF = 0.5;
    private static final double QUARTER = 0.25;
    private static final int LONG = 4;

    private static final Set<String> JOINING = Set.of("with", "that", "this", "have", "from", "then", "than", "they", "them", "there", "your", "into",
            "when", "what", "which", "where", "were", "will", "also", "only", "here", "again", "after", "before", "until", "even", "once", "under", "over", "away");

    private final Facts facts;

    CareCheck(Facts facts) {
        this.facts = facts;
    }

    List<Finding> missing(List<Cue> cues) {
        List<Set<String>> said = new ArrayList<>();
        cues.forEach(cue -> said.add(content(cue.words())));
        List<Finding> findings = new ArrayList<>();
        for (Cautions.Due due : facts.due()) {
            Set<String> needed = content(spoken(due));
            boolean borne = cues.stream().anyMatch(cue -> cue.caution().equals(due.caution().key())
                    && (!facts.isEnglish() || covers(content(cue.words()), needed, QUARTER)));
            if (!borne && said.stream().noneMatch(words -> covers(words, needed, HALF))) {
                findings.add(finding(due));
            }
        }
        return findings;
    }

    private static Finding finding(Cautions.Due due) {
        String source = due.caution().advice().figures().stream().map(figure -> figure.citation().written()).findFirst()
                .orElse(written(due.caution().published().citation()));
        return new Finding(Finding.Kind.CAUTION, 0, 0, "", "This demo needs the caution about " + due.caution().published().name() + ", because of: "
                + String.join(", ", due.because()) + ". No cue says it.", source, due.said());
    }

    private static String written(Citation citation) {
        return citation.written();
    }

    /** The advice without the temperatures, which may be left to the local rule. */
    private static String spoken(Cautions.Due due) {
        String figures = due.caution().temperatures().orElse("");
        return due.said().replace(figures, "");
    }

    private static boolean covers(Set<String> words, Set<String> needed, double part) {
        long both = needed.stream().filter(words::contains).count();
        return both >= needed.size() * part;
    }

    private static Set<String> content(String words) {
        Set<String> content = new HashSet<>();
        StringBuilder word = new StringBuilder();
        for (int i = 0; i <= words.length(); i++) {
            if (i < words.length() && Character.isLetter(words.charAt(i))) {
                word.append(Character.toLowerCase(words.charAt(i)));
            } else {
                if (word.length() >= LONG && !JOINING.contains(word.toString())) {
                    content.add(word.toString());
                }
                word.setLength(0);
            }
        }
        return content;
    }
}
