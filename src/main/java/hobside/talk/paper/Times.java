package hobside.talk.paper;

import hobside.talk.Cue;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.Timing;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How long each part of the talk is likely to take, and who does it: the words at the speaker's pace, and the time the hands need. */
final class Times {

    private final Talk talk;
    private final Words words;
    private final int pace;
    private final Timing timing;

    Times(Talk talk, Stand stand) {
        this.talk = talk;
        this.words = stand.words();
        this.pace = stand.demo().script().pacing().wordsPerMinute();
        this.timing = Timing.at(stand.demo().script().pacing());
    }

    private String say(String key) {
        return words.say("paper.times." + key);
    }

    List<Block> blocks() {
        List<List<String>> rows = new ArrayList<>();
        for (Talk.Section section : talk.sections()) {
            if (section.part() != Talk.Part.BENCH) {
                rows.add(List.of(section.heading(), who(section.cues()), minutes(speaking(section.cues())), minutes(hands(section.cues()))));
            }
        }
        List<Cue> all = talk.sections().stream().filter(section -> section.part() != Talk.Part.BENCH).flatMap(section -> section.cues().stream()).toList();
        rows.add(List.of(say("all"), "", minutes(speaking(all)), minutes(hands(all))));
        return List.of(new Block.Table(List.of(say("part"), say("who"), say("speaking"), say("hands")), rows, 2),
                new Block.Paragraph(words.say("paper.times.note", Map.of("pace", Integer.toString(pace)))));
    }

    private String who(List<Cue> cues) {
        Set<String> who = new LinkedHashSet<>();
        cues.forEach(cue -> who.add(words.say("talk.who." + cue.details().who().word())));
        return String.join(", ", who);
    }

    private double speaking(List<Cue> cues) {
        return cues.stream().mapToDouble(timing::speaking).sum();
    }

    private static double hands(List<Cue> cues) {
        return cues.stream().mapToInt(cue -> cue.details().seconds()).sum();
    }

    /** "2:10", to ten seconds. */
    private static String minutes(double seconds) {
        long tens = Math.round(seconds / 10);
        return tens / 6 + ":" + tens % 6 + "0";
    }
}
