package hobside.stage.whatif;

import hobside.Bundle;
import hobside.Finished;
import hobside.file.Scripts;
import hobside.talk.Demo;
import hobside.talk.Stand;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The questions of {@code asked/questions.csv} with the answers marked by hand, and what the index makes of them. */
public final class AskedQuestions {

    private static final Map<String, AnswerIndex> INDEXES = new HashMap<>();

    private AskedQuestions() {}

    public record Row(String set, String demo, String language, String question, List<String> right) {

        public boolean isAnswered() {
            return !right.isEmpty();
        }

        /** Whether an answer is shown in full at once, and which. */
        public java.util.Optional<String> shown() {
            return index(demo, language).find(question, 1).stream().filter(AnswerIndex.Hit::fits).map(hit -> hit.prepared().key()).findFirst();
        }

        /** At which place the first right answer stands, from 1; 0 when it is not offered at all. */
        public int place() {
            List<AnswerIndex.Hit> hits = index(demo, language).find(question, 50);
            for (int i = 0; i < hits.size(); i++) {
                if (right.contains(hits.get(i).prepared().key())) {
                    return i + 1;
                }
            }
            return 0;
        }
    }

    public static List<Row> all() {
        try {
            return Files.readAllLines(Path.of("src", "test", "resources", "asked", "questions.csv")).stream().filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(";", -1)).map(cells -> new Row(cells[0], cells[1], cells[2], cells[3], right(cells[4]))).toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static List<String> right(String keys) {
        return keys.isEmpty() ? List.of() : List.of(keys.split("\\|"));
    }

    public static synchronized AnswerIndex index(String name, String language) {
        return INDEXES.computeIfAbsent(name + language, key -> made(name, language));
    }

    private static AnswerIndex made(String name, String language) {
        Demo demo = Finished.demo(name);
        Stand own = stand(demo, language);
        List<Stand> others = List.of(stand(demo, language.equals("en") ? "es" : "en"));
        List<Prepared> all = PreparedAnswers.of(own, others, Bundle.STUDY.pantry(), Bundle.STUDY.books());
        return AnswerIndex.of(all, List.of(Bundle.STUDY.words("en"), Bundle.STUDY.words("es")));
    }

    private static Stand stand(Demo demo, String language) {
        return Scripts.stand(demo.with(demo.script().in(language)), Bundle.STUDY);
    }
}
