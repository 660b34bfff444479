package hobside.stage.whatif;

import hobside.advice.DoesNotHelp;
import hobside.advice.Myth;
import hobside.advice.Pantry;
import hobside.ledger.Books;
import hobside.talk.Cue;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Gathers all answers that are prepared for a demo: the likely questions, the figures of a serve, why each change works and what it
 * does not do, the cautions, and the myths.
 */
public final class PreparedAnswers {

    private final Stand stand;
    private final List<Prepared> all = new ArrayList<>();
    private final Set<String> keys = new HashSet<>();

    private PreparedAnswers(Stand stand) {
        this.stand = stand;
    }

    /**
     * In the language of the first stand.
     *
     * @param others the same demo in other languages, whose words are searched as well
     */
    public static List<Prepared> of(Stand stand, List<Stand> others, Pantry pantry, Books books) {
        List<Prepared> own = new PreparedAnswers(stand).gathered(pantry, books);
        Map<String, List<String>> also = new HashMap<>();
        for (Stand other : others) {
            new PreparedAnswers(other).gathered(pantry, books).forEach(each -> also.computeIfAbsent(each.key(), key -> new ArrayList<>()).add(each.question()));
        }
        return own.stream().map(each -> each.with(also.getOrDefault(each.key(), List.of()))).toList();
    }

    private List<Prepared> gathered(Pantry pantry, Books books) {
        List<Cue> questions = TalkWriter.questions(stand);
        for (int i = 0; i + 1 < questions.size(); i += 2) {
            String key = questions.get(i).key();
            add(key.substring(0, key.lastIndexOf('/')), questions.get(i).words(), questions.get(i + 1).words());
        }
        Talk talk = TalkWriter.write(stand);
        figures(talk);
        talk.sections().stream().filter(section -> section.part() == Talk.Part.CHANGE).forEach(this::change);
        talk.cues().stream().filter(Cue::isCaution).forEach(this::care);
        myths(pantry, books);
        return all;
    }

    private void add(String key, String question, String answer) {
        String free = key;
        for (int n = 2; !keys.add(free); n++) {
            free = key + "-" + n;
        }
        all.add(new Prepared(free, question, answer, List.of()));
    }

    private Words words() {
        return stand.words();
    }

    /** What the recap of the talk says of the whole, word for word. */
    private void figures(Talk talk) {
        add("figures", words().say("asked.figures"), String.join(" ", words(talk, "recap/was"), words(talk, "recap/beside")).strip());
    }

    private static String words(Talk talk, String key) {
        return talk.cues().stream().filter(cue -> cue.key().equals(key)).map(Cue::words).findFirst().orElse("");
    }

    private void change(Talk.Section section) {
        List<String> answer = new ArrayList<>();
        for (Cue cue : section.cues()) {
            if (cue.key().endsWith("/why") || cue.key().endsWith("/effect") || cue.key().endsWith("/not")) {
                answer.add(cue.words());
            }
        }
        String title = section.heading().contains(":") ? section.heading().substring(section.heading().indexOf(':') + 1).strip() : section.heading();
        add(section.key(), words().say("asked.change", Map.of("title", title)), String.join(" ", answer));
    }

    private void care(Cue cue) {
        String caution = cue.caution();
        String name = stand.beside().cautions().all().stream().filter(each -> each.key().equals(caution)).map(each -> each.published().name()).findFirst().orElse(caution);
        add("care:" + caution, words().find("cautions." + caution + ".name").orElse(name), cue.words());
    }

    private void myths(Pantry pantry, Books books) {
        for (Myth myth : DoesNotHelp.of(stand.demo().dish(), stand.demo().plan(), pantry, books, words())) {
            add("myth:" + myth.key() + myth.change().map(change -> ":" + change.of()).orElse(""), myth.title(), myth.said());
        }
    }
}
