package hobside.talk.paper;

import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Figure;
import hobside.ledger.Step;
import hobside.ledger.Totals;
import hobside.talk.Cue;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWords;
import hobside.talk.Written;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The whole script on paper: every cue under its word, the board after each change, and at the end the totals step by step. */
public final class ScriptSheet {

    private final Stand stand;
    private final Words words;
    private final TalkWords said;
    private final List<Block> blocks = new ArrayList<>();

    private ScriptSheet(Stand stand) {
        this.stand = stand;
        this.words = stand.words();
        this.said = TalkWords.of(stand);
    }

    public static Sheet of(Talk talk, Stand stand) {
        ScriptSheet script = new ScriptSheet(stand);
        talk.about().forEach(about -> script.blocks.add(new Block.Paragraph(about)));
        talk.sections().forEach(script::section);
        return new Sheet(new Sheet.Front(talk.title(), stand.words().language().code(), Sheet.Look.LARGE), script.blocks);
    }

    private void section(Talk.Section section) {
        if (section.part() == Talk.Part.CHANGE || section.part() == Talk.Part.RECAP) {
            blocks.add(new Block.PageBreak());
        }
        blocks.add(new Block.Heading(section.heading()));
        cues(section);
        section.board().ifPresent(board -> blocks.add(board(board)));
        if (section.part() == Talk.Part.RECAP && stand.ledger().steps().stream().anyMatch(Step::counts)) {
            blocks.add(chart());
        }
    }

    /** What has to be set out is a list to tick off; everything else is told. */
    private void cues(Talk.Section section) {
        List<String> ticks = new ArrayList<>();
        List<Block> told = new ArrayList<>();
        boolean allMay = section.cues().stream().noneMatch(cue -> cue.details().must());
        if (allMay && !section.cues().isEmpty()) {
            blocks.add(new Block.Paragraph(words.say("paper.may-all")));
        }
        for (Cue cue : section.cues()) {
            if (section.part() == Talk.Part.BENCH && cue.kind() != Cue.Kind.TAKE_CARE) {
                ticks.add(cue.words());
            } else {
                told.add(cueLine(cue, allMay));
            }
        }
        if (!ticks.isEmpty()) {
            blocks.add(new Block.Checks(ticks, false));
        }
        blocks.addAll(told);
    }

    private Block cueLine(Cue cue, boolean allMay) {
        List<String> remarks = new ArrayList<>();
        if (cue.details().who() == Cue.Who.HELPER) {
            remarks.add(words.say("talk.who.helper"));
        }
        if (!cue.details().must() && !allMay) {
            remarks.add(words.say("paper.may"));
        }
        String label = words.say("talk.cue." + cue.kind().word());
        return new Block.CueLine(new Block.CueLine.Mark(cue.kind().word(), label), cue.words(), String.join(", ", remarks));
    }

    private Block board(Talk.Board board) {
        String title = words.say("talk.board.title", Map.of("caption", board.caption().toLowerCase(Locale.ROOT)));
        return new Block.Board(new Block.Board.Head(title, words.say("talk.board.now"), words.say("talk.board.since")),
                board.lines().stream().map(line -> new Block.Board.Line(line.label(), line.now(), line.moved())).toList());
    }

    private Block chart() {
        List<Block.Chart.Point> points = new ArrayList<>();
        points.add(point(words.say("talk.board.start"), stand.ledger().start()));
        int number = 1;
        for (Step step : stand.ledger().steps()) {
            if (step.counts()) {
                points.add(point(words.say("talk.board.after", Map.of("n", Integer.toString(number++))), step.after()));
            }
        }
        List<String> sentences = points.stream().map(point -> words.say("paper.chart.point", Map.of("label", point.label(),
                "figure", point.figure().typical(), "energy", point.under().get(0), "cost", point.under().get(1)))).toList();
        List<String> under = List.of(words.say("talk.board.energy"), words.say("talk.board.cost"));
        return new Block.Chart(new Block.Chart.Head(words.say("paper.chart.title"), String.join(" ", sentences), words.say("paper.chart.range"), under), points);
    }

    private Block.Chart.Point point(String label, Totals totals) {
        Figure saturated = totals.of(Nutrient.FASAT, Basis.SERVE);
        Block.Chart.Figure figure = new Block.Chart.Figure(said.figure(Nutrient.FASAT, saturated),
                said.local(Written.range(Nutrient.FASAT, saturated.range())));
        return new Block.Chart.Point(label, saturated.range(), figure,
                List.of(said.figure(Nutrient.ENERC, totals.of(Nutrient.ENERC, Basis.SERVE)), said.money(totals.used(Basis.SERVE))));
    }
}
