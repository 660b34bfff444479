package hobside.file;

import hobside.talk.Cue;
import hobside.talk.Edit;
import hobside.talk.Script;
import java.util.List;
import java.util.Map;

/** Writes what was done to a talk by hand, one cue a line; nothing at all where nothing was done. */
final class ScriptWriter {

    private ScriptWriter() {}

    static String of(Script script, Page page) {
        if (script.equals(Script.UNTOUCHED)) {
            return "";
        }
        return page.text("language", script.language())
                .number("wordsPerMinute", script.pacing().wordsPerMinute())
                .number("slot", script.pacing().slot())
                .rowsIfAny("names", script.glosses().entrySet().stream().map(ScriptWriter::gloss).toList())
                .rowsIfAny("cues", script.edits().stream().map(ScriptWriter::edit).toList())
                .written();
    }

    private static Row gloss(Map.Entry<String, String> gloss) {
        return new Row().text("of", gloss.getKey()).text("here", gloss.getValue());
    }

    private static Row edit(Edit edit) {
        Row row = new Row().text("cue", edit.cue());
        edit.place().ifPresent(place -> row.text("in", place.section()).textIfAny("after", place.after()));
        edit.traits().kind().ifPresent(kind -> row.text("kind", kind.word()));
        if (!edit.words().isEmpty()) {
            Row words = new Row();
            edit.words().forEach(words::text);
            row.row("words", words);
        }
        edit.traits().details().ifPresent(details -> details(details, row));
        return edit.traits().out() ? row.raw("out", "true") : row;
    }

    private static void details(Cue.Details details, Row row) {
        row.text("who", details.who().word()).number("seconds", details.seconds()).raw("must", Boolean.toString(details.must()));
        texts("equipment", details.needs().equipment(), row);
        texts("props", details.needs().props(), row);
    }

    private static void texts(String key, List<String> texts, Row row) {
        if (!texts.isEmpty()) {
            row.texts(key, texts);
        }
    }
}
