package hobside.stage.whatif;

import hobside.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds the prepared answer to a question as somebody asks it: with slips, in other words, in any of the languages.
 *
 * <p>Each word of the question is held against the words of every prepared question and, with less weight, of its answer. Rare words
 * weigh more (inverse document frequency, Spärck Jones 1972). Words that mean the same here – {@code asked.same.*} – count as one.
 * What is found is what stands there: no answer is ever put together.
 */
public final class AnswerIndex {

    private static final double QUESTION = 1;
    private static final double OTHER_LANGUAGE = 0.9;
    private static final double ANSWER = 0.4;
    private static final double SAME_MEANING = 0.9;

    /** From this part of the asked words upwards an answer is shown; below it, nothing fits. Chosen on the half of questions worked with. */
    static final double FITS = 0.4;

    /** Down to this, answers are worth a look, though none is shown unasked. */
    static final double PERHAPS = 0.2;

    /** A word that nothing here knows counts less: people tell of themselves when they ask. */
    private static final double UNKNOWN = 0.75;

    /** How much it counts that the prepared question is asked whole. */
    private static final double WHOLE = 0.2;

    /** A myth answers something narrower than it sounds, so a general answer goes before it. */
    private static final double NARROW = 0.85;

    private final List<Prepared> all;
    private final Set<String> stop = new HashSet<>();
    private final Map<String, String> meaning = new HashMap<>();
    private final Map<String, double[]> weights = new HashMap<>();
    private final Map<String, Double> rarity = new HashMap<>();
    private final List<Set<String>> questions = new ArrayList<>();

    /** An answer, and how well it fits: 1 when every word asked is in its question. */
    public record Hit(Prepared prepared, double score) {

        /** Whether it may be shown in full at once. */
        public boolean fits() {
            return score >= FITS;
        }
    }

    private AnswerIndex(List<Prepared> all, List<Words> languages) {
        this.all = List.copyOf(all);
        languages.forEach(this::learn);
        for (int i = 0; i < this.all.size(); i++) {
            Prepared each = this.all.get(i);
            questions.add(new HashSet<>(enter(each.question(), i, QUESTION)));
            for (String other : each.also()) {
                enter(other, i, OTHER_LANGUAGE);
            }
            enter(each.answer(), i, ANSWER);
        }
        weights.forEach((term, of) -> rarity.put(term, rarity(of)));
    }

    /** An index of these answers; the words of every language in which somebody may ask. */
    public static AnswerIndex of(List<Prepared> all, List<Words> languages) {
        return new AnswerIndex(all, languages);
    }

    private void learn(Words words) {
        stop.addAll(Terms.words(words.find("asked.stop").orElse("")));
        for (String key : words.keys()) {
            if (key.startsWith("asked.same.")) {
                for (String word : Terms.of(words.find(key).orElse(""))) {
                    meaning.putIfAbsent(word, "=" + key);
                }
            }
        }
    }

    /** Enters the words of a text, and says which stems they have. */
    private List<String> enter(String text, int index, double weight) {
        List<String> stems = new ArrayList<>();
        for (String word : Terms.words(text)) {
            if (!stop.contains(word)) {
                String stem = Terms.stem(word);
                stems.add(stem);
                weigh(stem, index, weight);
                if (meaning.containsKey(stem)) {
                    weigh(meaning.get(stem), index, weight * SAME_MEANING);
                }
            }
        }
        return stems;
    }

    private void weigh(String term, int index, double weight) {
        double[] of = weights.computeIfAbsent(term, key -> new double[all.size()]);
        of[index] = Math.max(of[index], weight);
    }

    private double rarity(double[] of) {
        double carriers = 0;
        for (double weight : of) {
            carriers += weight;
        }
        return Math.log(1 + all.size() / Math.max(ANSWER, carriers));
    }

    public List<Prepared> all() {
        return all;
    }

    /** The answers that fit at all, the best first. Nothing typed finds all of them in their own order. */
    public List<Hit> find(String typed, int most) {
        List<String> words = Terms.words(typed).stream().filter(word -> !stop.contains(word)).distinct().toList();
        if (words.isEmpty()) {
            return all.stream().limit(most).map(each -> new Hit(each, typed.isBlank() ? 1 : 0)).toList();
        }
        Scores scores = new Scores();
        words.forEach(word -> scores.add(Terms.stem(word)));
        List<Hit> hits = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            double score = scores.of(i);
            if (score >= PERHAPS) {
                hits.add(new Hit(all.get(i), score));
            }
        }
        hits.sort(Comparator.comparingDouble(hit -> -hit.score()));
        return hits.subList(0, Math.min(most, hits.size()));
    }

    /** What the words asked so far give to each answer. */
    private final class Scores {
        private final double[] given = new double[all.size()];
        private final Set<String> met = new HashSet<>();
        private double asked;

        void add(String stem) {
            Given word = known.size() < MOST_KNOWN ? known.computeIfAbsent(stem, AnswerIndex.this::given) : given(stem);
            for (int i = 0; i < given.length; i++) {
                given[i] += word.best()[i];
            }
            met.addAll(word.met());
            asked += word.could();
        }

        double of(int index) {
            double score = (1 - WHOLE) * given[index] / asked + WHOLE * whole(index);
            return all.get(index).key().startsWith("myth:") ? score * NARROW : score;
        }

        /** The part of the prepared question that was asked, its rare words counting more. */
        private double whole(int index) {
            double all = 0;
            double hit = 0;
            for (String stem : questions.get(index)) {
                double rare = rarity.get(stem);
                all += rare;
                hit += met.contains(stem) || meaning.containsKey(stem) && met.contains(meaning.get(stem)) ? rare : 0;
            }
            return all == 0 ? 0 : hit / all;
        }
    }

    /** Words of questions are looked up once, up to so many: each key of a question asks for the words before it again. */
    private static final int MOST_KNOWN = 2_000;

    private final Map<String, Given> known = new HashMap<>();

    /** What one word gives to each answer, the terms it meets for sure, and how much it could give. */
    private record Given(double[] best, Set<String> met, double could) {}

    private Given given(String stem) {
        double[] best = new double[all.size()];
        Set<String> met = new HashSet<>();
        double could = 0;
        for (Map.Entry<String, double[]> entry : weights.entrySet()) {
            double alike = entry.getKey().charAt(0) == '=' ? 0 : Alike.of(stem, entry.getKey());
            could = alike == 0 ? could : Math.max(could, take(entry.getKey(), alike, best, met));
            String means = alike > SURE ? meaning.get(entry.getKey()) : null;
            could = means == null ? could : Math.max(could, take(means, alike, best, met));
        }
        String means = meaning.get(stem);
        could = means == null || !weights.containsKey(means) ? could : Math.max(could, take(means, 1, best, met));
        return new Given(best, met, could == 0 ? UNKNOWN * Math.log(1 + all.size()) : could);
    }

    private double take(String term, double alike, double[] best, Set<String> met) {
        double rare = rarity.get(term);
        double[] of = weights.get(term);
        for (int i = 0; i < best.length; i++) {
            best[i] = Math.max(best[i], rare * alike * of[i]);
        }
        if (alike > SURE) {
            met.add(term);
        }
        return rare;
    }

    /** A word that only looks like another does not bring the other's meaning along. */
    private static final double SURE = 0.69;
}
