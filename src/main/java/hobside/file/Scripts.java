package hobside.file;

import hobside.talk.Demo;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
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

/** The printed forms of a demo. */
public final class Scripts {

    /** What can be printed, and how its file is told from the others. */
    public enum Paper {
        SCRIPT(""),
        HANDOUT("-handout"),
        BENCH("-bench");

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
        List<Printed> all = new ArrayList<>();
        for (Paper paper : Paper.values()) {
            Sheet sheet = sheet(paper, demo, study);
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
        Stand stand = stand(demo, study);
        return switch (paper) {
            case SCRIPT -> ScriptSheet.of(TalkWriter.write(stand), stand);
            case HANDOUT -> Handout.of(stand, market(study));
            case BENCH -> BenchSheet.of(TalkWriter.write(stand), stand);
        };
    }

    private static Market market(Study study) {
        return new Market(study.books().prices(), study.shelf()::food);
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
