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
        List<String> parts = new ArrayList<>();
        parts.add(told.cue("/do").map(Cue::words).orElse(""));
        parts.add(told.reason().why());
        parts.add(figure(words, told));
        parts.add(told.reason().not());
        told.cares().stream().findFirst().ifPresent(care -> parts.add(care.words()));
        return fitted(parts);
    }

    /** What the effect is; where fat and salt stay as they are, what there still is. */
    private static String figure(Words words, Subject.Told told) {
        Talk.Section section = told.section();
        String effect = told.cue("/effect").map(Cue::words).orElse("");
        boolean tells = effect.chars().anyMatch(Character::isDigit);
        return tells ? effect : effect + " " + words.say("practice.model.still", Map.of("now", section.figures().getOrDefault("now", "")));
    }

    /** Whole sentences until there is no more room; of the caution at least the first. */
    private static String fitted(List<String> parts) {
        StringBuilder text = new StringBuilder();
        int room = Model.LONGEST;
        for (int i = 0; i < parts.size(); i++) {
            int kept = i + 1 < parts.size() ? 0 : room;
            for (String sentence : sentences(parts.get(i))) {
                int count = Text.words(sentence);
                if (count <= room && (kept == 0 || count <= kept)) {
                    text.append(text.length() == 0 ? "" : " ").append(sentence);
                    room -= count;
                }
            }
        }
        return text.toString();
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
