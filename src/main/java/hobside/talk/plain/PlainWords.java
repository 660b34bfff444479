package hobside.talk.plain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Hard words, each with what to say instead: "utilise" is "use".
 *
 * <p>Whole words are found, in any case of letters and with their usual endings (utilised, purchases); of two that begin at one
 * place the longer wins ("saturated fatty acids" before "saturated").
 */
public final class PlainWords {

    /** A hard word in one of its forms, word by word, and the plain one. */
    private record Entry(List<String> words, String plain) {}

    public static final PlainWords NONE = new PlainWords(Map.of());

    private final Map<String, List<Entry>> byFirstWord;

    private PlainWords(Map<String, List<Entry>> byFirstWord) {
        this.byFirstWord = byFirstWord;
    }

    /** The hard words of one language, each with its plain one. */
    public static PlainWords of(Map<String, String> plainByHard, Language language) {
        Map<String, List<Entry>> entries = new HashMap<>();
        plainByHard.forEach((hard, plain) -> {
            for (List<String> form : Inflections.of(hard, language)) {
                entries.computeIfAbsent(form.get(0), first -> new ArrayList<>()).add(new Entry(form, plain));
            }
        });
        entries.values().forEach(list -> list.sort((one, other) -> other.words().size() - one.words().size()));
        return new PlainWords(entries);
    }

    /** The hard words of a sentence of this cue, from left to right; none inside another. */
    public List<HardWord> in(Sentence sentence, int cue) {
        List<HardWord> found = new ArrayList<>();
        List<Word> words = sentence.words();
        int i = 0;
        while (i < words.size()) {
            Optional<Entry> entry = at(words, i);
            int taken = entry.map(hard -> hard.words().size()).orElse(1);
            if (entry.isPresent()) {
                found.add(hard(sentence, entry.get(), new Place(cue, words.get(i).at(), words.get(i + taken - 1).end())));
            }
            i += taken;
        }
        return found;
    }

    private static HardWord hard(Sentence sentence, Entry entry, Place place) {
        String found = sentence.text().substring(place.from() - sentence.at(), place.to() - sentence.at());
        return new HardWord(found, entry.plain(), place);
    }

    private Optional<Entry> at(List<Word> words, int i) {
        return byFirstWord.getOrDefault(words.get(i).plain(), List.of()).stream()
                .filter(entry -> i + entry.words().size() <= words.size())
                .filter(entry -> plain(words.subList(i, i + entry.words().size())).equals(entry.words())).findFirst();
    }

    private static List<String> plain(List<Word> words) {
        return words.stream().map(Word::plain).toList();
    }
}
