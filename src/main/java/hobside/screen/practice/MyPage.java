package hobside.screen.practice;

import hobside.practice.Boxes;
import hobside.practice.Kind;
import hobside.practice.Progress;
import hobside.practice.ReportSheet;
import hobside.screen.Screen;
import hobside.screen.read.ReadScreen;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How far a trainee has come: bars of characters, the boxes, and what comes next. */
final class MyPage {

    private static final int BAR = 20;

    private MyPage() {}

    static Screen of(Screen back, Room room, String trainee) {
        return ReadScreen.text(back, "How far " + trainee + " has come", lines(room, trainee));
    }

    static List<String> lines(Room room, String trainee) {
        Progress progress = Progress.of(room.of(trainee));
        Words words = room.syllabus().with().words();
        List<String> lines = new ArrayList<>();
        lines.add(progress.attempts() == 0 ? "Nothing has been answered yet." : progress.attempts() + " answers so far."
                + progress.inARow().map(row -> " The last " + row + " were right.").orElse(""));
        lines.add("");
        lines.add("BY KIND");
        for (Kind kind : Kind.DRAWN) {
            Progress.Tally tally = progress.of(kind);
            lines.add(row(words.say("exercise.kind." + kind.word()), tally) + (tally.count() == 0 ? "" : "  level " + tally.level()));
        }
        lines.add("");
        lines.add("BY TOPIC");
        progress.topics().entrySet().stream().sorted(Map.Entry.comparingByKey())
                .forEach(each -> lines.add(row(ReportSheet.topic(each.getKey(), words), each.getValue())));
        lines.add("");
        lines.add("BOXES: what is known moves on and comes back later; what was missed comes back soon");
        lines.addAll(boxes(progress));
        room.next(trainee).ifPresent(next -> lines.addAll(List.of("", "NEXT",
                ReportSheet.card(next.exercise().label().card(), words) + " – " + words.say("exercise.next." + next.reason()) + ".")));
        return lines;
    }

    private static String row(String name, Progress.Tally tally) {
        int full = (int) Math.round(tally.share() * BAR);
        String bar = "[" + "#".repeat(full) + ".".repeat(BAR - full) + "]";
        String padded = name.length() > 26 ? name.substring(0, 26) : name + " ".repeat(26 - name.length());
        return padded + (tally.count() == 0 ? " not met yet" : " " + bar + String.format(Locale.ROOT, " %3d %% of %d", Math.round(tally.share() * 100), tally.count()));
    }

    private static List<String> boxes(Progress progress) {
        List<String> lines = new ArrayList<>();
        for (int box = 1; box <= Boxes.COUNT; box++) {
            int number = box;
            long count = progress.boxes().places().values().stream().filter(place -> place.box() == number).count();
            lines.add("box " + box + "  " + "=".repeat((int) Math.min(40, count)) + " " + count);
        }
        return lines;
    }
}
