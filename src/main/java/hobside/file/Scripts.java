package hobside.file;

import hobside.dish.Plan;
import hobside.stage.OrderSheet;
import hobside.stage.Retelling;
import hobside.stage.RunningOrder;
import hobside.stage.order.Effort;
import hobside.talk.Demo;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import hobside.talk.Timing;
import hobside.talk.paper.BenchSheet;
import hobside.talk.paper.Handout;
import hobside.talk.paper.HtmlSheet;
import hobside.talk.paper.Market;
import hobside.talk.paper.MarkdownSheet;
import hobside.talk.paper.ScriptSheet;
import hobside.talk.paper.Sheet;
import hobside.talk.paper.TextSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The printed forms of a demo. */
public final class Scripts {

    /** What can be printed, and how its file is told from the others. */
    public enum Paper {
        SCRIPT(""),
        HANDOUT("-handout"),
        BENCH("-bench"),
        ORDER("-order");

        private final String tail;

        Paper(String tail) {
            this.tail = tail;
        }
    }

    /** In what form, and the ending of its file. */
    public enum Form {
        TEXT("txt"),
        MARKDOWN("md"),
        HTML("html");

        private final String ending;

        Form(String ending) {
            this.ending = ending;
        }
    }

    /** One printed form, ready to be written. */
    public record Printed(String name, String ending, String text) {}

    private Scripts() {}

    /** Every paper of a demo in every form, under the name of the demo. */
    public static List<Printed> all(String name, Demo demo, Study study) {
        return all(name, demo, study, Map.of());
    }

    /** The same, with the seconds that the cues of these keys were measured to take. */
    public static List<Printed> all(String name, Demo demo, Study study, Map<String, Integer> measured) {
        List<Printed> all = new ArrayList<>();
        for (Paper paper : Paper.values()) {
            Sheet sheet = sheet(paper, demo, study, measured);
            for (Form form : Form.values()) {
                all.add(new Printed(SafeName.tailed(name, paper.tail), form.ending, printed(sheet, form)));
            }
        }
        return all;
    }

    public static String printed(Sheet sheet, Form form) {
        return switch (form) {
            case TEXT -> TextSheet.of(sheet);
            case MARKDOWN -> MarkdownSheet.of(sheet);
            case HTML -> HtmlSheet.of(sheet);
        };
    }

    /** A paper of a demo, in the language that the demo is told in. */
    public static Sheet sheet(Paper paper, Demo demo, Study study) {
        return sheet(paper, demo, study, Map.of());
    }

    private static Sheet sheet(Paper paper, Demo demo, Study study, Map<String, Integer> measured) {
        Stand stand = stand(demo, study);
        return switch (paper) {
            case SCRIPT -> ScriptSheet.of(TalkWriter.write(stand), stand);
            case HANDOUT -> Handout.of(stand, market(study));
            case BENCH -> BenchSheet.of(TalkWriter.write(stand), stand);
            case ORDER -> OrderSheet.of(runningOrder(stand, Timing.at(demo.script().pacing()).knowing(measured)), stand);
        };
    }

    private static Market market(Study study) {
        return new Market(study.books().prices(), study.shelf()::food);
    }

    /** So much searching that a demo of a dozen steps is settled in a blink, and a much larger one does not keep anybody waiting. */
    private static final Effort EFFORT = Effort.nodes(4_000);

    /** Who and what is busy when, and what is done ahead; for the cues of these keys, in the seconds they were measured to take. */
    public static RunningOrder runningOrder(Demo demo, Study study, Map<String, Integer> measured) {
        return runningOrder(stand(demo, study), Timing.at(demo.script().pacing()).knowing(measured));
    }

    private static RunningOrder runningOrder(Stand stand, Timing timing) {
        return RunningOrder.of(new RunningOrder.Given(stand, TalkWriter.write(stand), timing), EFFORT);
    }

    /** A talk that is being run, written anew for the demo as it is now, in the order in which the run began. */
    public static Talk arranged(Demo demo, Study study, List<String> keys) {
        Stand stand = stand(demo, study);
        return RunningOrder.arranged(stand, TalkWriter.write(stand), keys);
    }

    /** The plan in an order of telling that takes less time on stage and leaves no more to be done ahead; empty where none was found. */
    public static Optional<Plan> sooner(Demo demo, Study study, RunningOrder told, Map<String, Integer> measured) {
        Stand stand = stand(demo, study);
        RunningOrder.Given given = new RunningOrder.Given(stand, TalkWriter.write(stand), Timing.at(demo.script().pacing()).knowing(measured));
        return Retelling.of(given, told, EFFORT).filter(plan -> {
            RunningOrder other = runningOrder(demo.with(plan), study, measured);
            return other.outlook().ways().equals(told.outlook().ways()) && other.seconds() + Retelling.WORTH_IT <= told.seconds();
        });
    }

    /** The running order as text for a screen of this width. */
    public static String orderText(RunningOrder order, Demo demo, Study study, int width) {
        return TextSheet.of(OrderSheet.of(order, stand(demo, study)), width);
    }

    /** The script as text. */
    public static String text(Demo demo, Study study) {
        return text(demo, study, TextSheet.SHEET);
    }

    /** The script as text for a screen of this width. */
    public static String text(Demo demo, Study study, int width) {
        return TextSheet.of(sheet(Paper.SCRIPT, demo, study), width);
    }

    /** The script as Markdown. */
    public static String markdown(Demo demo, Study study) {
        return printed(sheet(Paper.SCRIPT, demo, study), Form.MARKDOWN);
    }

    /** The script as HTML. */
    public static String html(Demo demo, Study study) {
        return printed(sheet(Paper.SCRIPT, demo, study), Form.HTML);
    }

    public static Talk talk(Demo demo, Study study) {
        return TalkWriter.write(stand(demo, study));
    }

    /** What the talk of a demo is written from, in the language that the demo is told in. */
    public static Stand stand(Demo demo, Study study) {
        return Stand.of(demo, study.books(), study.beside(demo));
    }
}
