package hobside.practice.rubric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The phrases of a language made ready for one subject: {food} and {new} stand for its foods. */
final class Spotter {

    private static final String NO = "@no";

    private final Concepts concepts;
    private final Map<String, List<String>> foods;
    private final Lexicon lexicon = new Lexicon();
    private final Map<String, Slot> slots = new HashMap<>();
    private final Map<String, List<Phrase>> phrases = new HashMap<>();
    private final Map<String, Heard> books = new HashMap<>();
    private final Slot noes;

    private Spotter(Concepts concepts, Map<String, List<String>> foods) {
        this.concepts = concepts;
        this.foods = foods;
        this.noes = slot(NO);
    }

    /**
     * All that is written in the table, with the names of the subject's foods.
     *
     * @param foods names by gap, "food" or "new"; each name in plain words
     */
    static Spotter of(Concepts concepts, Map<String, List<String>> foods) {
        Spotter spotter = new Spotter(concepts, foods);
        spotter.words("common").forEach(word -> spotter.lexicon.number(Text.plain(word)));
        concepts.keys().stream().filter(key -> !key.startsWith("group.") && !key.startsWith("number.") && !key.equals("common"))
                .forEach(key -> spotter.phrases.put(key, spotter.phrases(concepts.find(key).orElse(""))));
        for (String table : List.of("number.words", "number.parts")) {
            spotter.words(table).forEach(pair -> spotter.lexicon.number(pair.split("=")[0]));
        }
        concepts.keys().stream().filter(key -> key.startsWith("group.")).forEach(key -> spotter.slot("@" + key.substring("group.".length())));
        foods.keySet().forEach(gap -> spotter.slot("{" + gap + "}"));
        return spotter;
    }

    /** The words of a line of the table; none when it has no such line. */
    private List<String> words(String key) {
        return concepts.find(key).stream().flatMap(line -> Arrays.stream(line.strip().split("\\s+"))).filter(word -> !word.isEmpty()).toList();
    }

    Heard hear(String answer) {
        return new Heard(Text.of(answer), lexicon, noes);
    }

    /** A sentence of the books, heard once. */
    synchronized Heard book(String text) {
        return books.computeIfAbsent(text, this::hear);
    }

    /** The first phrase of a key that stands in the answer. */
    Optional<int[]> first(String key, Heard heard) {
        for (Phrase phrase : phrases.getOrDefault(key, List.of())) {
            Optional<int[]> span = phrase.in(heard);
            if (span.isPresent()) {
                return span;
            }
        }
        return Optional.empty();
    }

    /** Every place where a phrase of a key stands, no two alike. */
    List<int[]> all(String key, Heard heard) {
        List<int[]> all = new ArrayList<>();
        for (Phrase phrase : phrases.getOrDefault(key, List.of())) {
            phrase.in(heard).filter(span -> all.stream().noneMatch(other -> other[0] <= span[1] && span[0] <= other[1])).ifPresent(all::add);
        }
        return all;
    }

    /** Whether the table has this key. */
    boolean knows(String key) {
        return phrases.containsKey(key);
    }

    boolean has(String key, Heard heard) {
        return first(key, heard).isPresent();
    }

    /** A group by its name with {@code @}, or the names of a food by its gap. */
    Slot slot(String written) {
        Slot known = slots.get(written);
        if (known == null) {
            known = new Slot(slots.size(), rows(written), written.equals(NO));
            slots.put(written, known);
        }
        return known;
    }

    private List<int[]> rows(String written) {
        List<int[]> rows = new ArrayList<>();
        if (written.startsWith("@")) {
            String group = concepts.find("group." + written.substring(1))
                    .orElseThrow(() -> new IllegalArgumentException("rubric.properties names the group " + written + ", which it does not have"));
            for (String word : group.strip().split("\\s+")) {
                rows.add(row(word));
            }
        } else if (written.startsWith("{")) {
            foods.getOrDefault(written.substring(1, written.length() - 1), List.of()).forEach(name -> rows.add(row(name.replace(' ', '_'))));
        } else {
            rows.add(row(written));
        }
        return rows;
    }

    private int[] row(String written) {
        String[] words = written.split("[_-]");
        int[] row = new int[words.length];
        for (int i = 0; i < words.length; i++) {
            row[i] = lexicon.number(words[i].endsWith("*") ? Text.plain(words[i].substring(0, words[i].length() - 1)) + "*" : Text.plain(words[i]));
        }
        return row;
    }

    private List<Phrase> phrases(String line) {
        List<Phrase> all = new ArrayList<>();
        for (String written : line.split("\\|")) {
            if (!written.isBlank()) {
                all.add(phrase(written.strip()));
            }
        }
        return all;
    }

    private Phrase phrase(String written) {
        boolean free = written.startsWith("~");
        List<Slot> there = new ArrayList<>();
        List<Slot> absent = new ArrayList<>();
        boolean no = false;
        for (String part : (free ? written.substring(1) : written).strip().split("\\s+")) {
            (part.startsWith("!") ? absent : there).add(slot(part.startsWith("!") ? part.substring(1) : part));
            no |= saysNo(part);
        }
        return new Phrase(there, absent, free || no);
    }

    /** Whether a part of a phrase is a "not" itself, such as {@code no} or {@code @no} or {@code not_quite}. */
    private boolean saysNo(String part) {
        if (part.startsWith("!")) {
            return false;
        }
        if (part.equals(NO)) {
            return true;
        }
        String first = Text.plain(part.split("[_-]")[0]);
        return !part.startsWith("@") && (first.endsWith("n't")
                || words("group.no").contains(first));
    }
}
