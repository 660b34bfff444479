package hobside.file;

import hobside.guide.Citation;
import hobside.guide.Mark;
import hobside.guide.Published;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads what every published row has: key, name, place, and where it comes from. */
final class PublishedReader {

    static final String[] KEYS = {"key", "name", "place", "source", "date", "mark", "note"};

    private static final List<String> MARKS = Arrays.stream(Mark.values()).map(Mark::word).toList();

    private PublishedReader() {}

    static Optional<Published> published(Fields fields) {
        Optional<String> key = Ids.of(fields, "key");
        Optional<String> name = fields.text("name", Limits.NAME);
        Optional<String> place = fields.text("place", Limits.NAME);
        Optional<Citation> citation = citation(fields);
        return key.isPresent() && name.isPresent() && place.isPresent()
                ? citation.map(known -> new Published(key.get(), name.get(), place.get(), known))
                : Optional.empty();
    }

    static Optional<Citation> citation(Fields fields) {
        Optional<String> source = fields.text("source", Limits.NOTE);
        Optional<Mark> mark = word(fields, "mark", Mark::parse, MARKS);
        String note = fields.textOr("note", Limits.NOTE, "");
        String date = fields.textOr("date", Limits.NAME, "");
        return source.isPresent() ? mark.map(known -> new Citation(source.get(), date, known, note)) : Optional.empty();
    }

    static <T> Optional<T> word(Fields fields, String key, Function<String, Optional<T>> parse, List<String> allowed) {
        return fields.word(key, parse, allowed);
    }
}
