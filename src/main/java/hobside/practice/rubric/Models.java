package hobside.practice.rubric;

import hobside.talk.Cue;
import hobside.talk.Talk;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes a model answer of what the talk itself says at the change: deed, reason, figures, what it does not do, one caution. */
final class Models {

    private Models() {}

    static Model of(Subject subject) {
        return subject.told().map(told -> new Model(text(subject.stand().words(), told)))
                .orElseGet(() -> new Model(subject.asked().map(Asked::prepared).orElse("")));
    }

    private static String text(Words words, Subject.Told told) {
        List<String> before = sentences(told.cue("/do").map(Cue::words).orElse("") + " " + told.reason().why());
        List<String> after = new ArrayList<>(sentences(told.reason().not()));
        told.cares().stream().findFirst().ifPresent(care -> after.add(sentences(care.words()).get(0)));
        int room = Model.LONGEST - Text.words(String.join(" ", before)) - Text.words(String.join(" ", after));
        List<String> all = new ArrayList<>(before);
        for (String sentence : sentences(figure(words, told))) {
            room -= Text.words(sentence);
            if (room >= 0) {
                all.add(sentence);
            }
        }
        all.addAll(after);
        return String.join(" ", all);
    }

    /** What the effect is; where fat and salt stay as they are, what there still is. */
    private static String figure(Words words, Subject.Told told) {
        Talk.Section section = told.section();
        String effect = told.cue("/effect").map(Cue::words).orElse("");
        boolean tells = effect.chars().anyMatch(Character::isDigit);
        return tells ? effect : effect + " " + words.say("practice.model.still", Map.of("now", section.figures().getOrDefault("now", "")));
    }

    private static List<String> sentences(String part) {
        List<String> sentences = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < part.length(); i++) {
            boolean end = ".!?".indexOf(part.charAt(i)) >= 0 && (i + 1 == part.length() || part.charAt(i + 1) == ' ');
            if (end || i + 1 == part.length()) {
                String sentence = part.substring(from, i + 1).strip();
                if (!sentence.isEmpty()) {
                    sentences.add(sentence);
                }
                from = i + 1;
            }
        }
        return sentences;
    }
}
