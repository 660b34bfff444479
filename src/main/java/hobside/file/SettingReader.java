package hobside.file;

import hobside.talk.Cue;
import hobside.talk.Setting;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads and writes the hall that a demo is given in, and what was decided by hand for its running order. */
final class SettingReader {

    private static final Keys KEYS = Keys.of("hobs", "ovens", "helper", "tasks");
    private static final Keys TASK = Keys.of("task", "shown", "who", "earliest", "latest", "talkedOver");
    private static final Bounds HOBS = Bounds.of(0, Setting.Hall.MOST, "hobs or ovens", "say how many can be used at once");
    private static final Bounds HOUR = Bounds.of(0, Limits.MINUTES, "minutes", "count from the beginning of the demonstration");

    /** A key names a change. */
    private static final int KEY = 4 * Limits.ID;

    private SettingReader() {}

    /** The part "hall" of a demo; the usual one where there is none. */
    static Setting read(Fields demo) {
        if (!demo.has("hall")) {
            return Setting.USUAL;
        }
        Optional<Fields> fields = Fields.of(demo.value("hall"), demo.where().field("hall"), KEYS, demo.problems());
        return fields.isEmpty() ? Setting.USUAL : setting(fields.get());
    }

    private static Setting setting(Fields fields) {
        Setting.Hall usual = Setting.Hall.USUAL;
        Setting setting = Setting.USUAL.with(new Setting.Hall(fields.whole("hobs", HOBS, usual.hobs()),
                fields.whole("ovens", HOBS, usual.ovens()), fields.yes("helper")));
        List<Json> items = fields.list("tasks", Limits.CUES);
        for (int i = 0; i < items.size(); i++) {
            Optional<Fields> line = Fields.of(items.get(i), fields.where().field("tasks").item(i), TASK, fields.problems());
            Optional<String> task = line.isPresent() ? line.get().text("task", KEY) : Optional.empty();
            if (task.isPresent()) {
                setting = setting.with(task.get(), wanted(line.get()));
            }
        }
        return setting;
    }

    private static Setting.Wanted wanted(Fields fields) {
        Setting.Shown shown = fields.has("shown") ? fields.word("shown", SettingReader::shown, words(Setting.Shown.values()))
                .orElse(Setting.Shown.OPEN) : Setting.Shown.OPEN;
        Optional<Cue.Who> who = fields.has("who") ? fields.word("who", SettingReader::who, List.of("presenter", "helper")) : Optional.empty();
        return new Setting.Wanted(shown, who, fields.whole("earliest", HOUR, 0), fields.whole("latest", HOUR, 0), fields.yes("talkedOver"));
    }

    private static Optional<Setting.Shown> shown(String word) {
        return Arrays.stream(Setting.Shown.values()).filter(each -> each.word().equals(word)).findFirst();
    }

    private static Optional<Cue.Who> who(String word) {
        return Arrays.stream(Cue.Who.values()).filter(each -> each.word().equals(word)).findFirst();
    }

    private static List<String> words(Setting.Shown[] all) {
        return Arrays.stream(all).map(Setting.Shown::word).toList();
    }

    /** As {@link #read} takes it; nothing for the usual hall with nothing decided. */
    static String written(Setting setting) {
        if (setting.equals(Setting.USUAL)) {
            return "";
        }
        Setting.Hall hall = setting.hall();
        return new Page(1).number("hobs", hall.hobs()).number("ovens", hall.ovens()).raw("helper", Boolean.toString(hall.helper()))
                .rowsIfAny("tasks", setting.tasks().entrySet().stream().map(each -> row(each.getKey(), each.getValue())).toList()).written();
    }

    private static Row row(String task, Setting.Wanted wanted) {
        Row row = new Row().text("task", task);
        if (wanted.shown() != Setting.Shown.OPEN) {
            row.text("shown", wanted.shown().word());
        }
        wanted.who().ifPresent(who -> row.text("who", who.word()));
        if (wanted.earliest() > 0) {
            row.number("earliest", wanted.earliest());
        }
        if (wanted.latest() > 0) {
            row.number("latest", wanted.latest());
        }
        return wanted.talkedOver() ? row.raw("talkedOver", "true") : row;
    }
}
