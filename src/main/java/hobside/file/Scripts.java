package hobside.file;

import hobside.talk.Demo;
import hobside.talk.MarkdownScript;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import hobside.talk.TextScript;
import hobside.words.Words;

/** The printed forms of a demo. */
public final class Scripts {

    private Scripts() {}

    public static String text(Demo demo, Study study) {
        return TextScript.of(talk(demo, study), words(demo, study));
    }

    /** The text for a screen of this width. */
    public static String text(Demo demo, Study study, int width) {
        return TextScript.of(talk(demo, study), words(demo, study), width);
    }

    public static String markdown(Demo demo, Study study) {
        return MarkdownScript.of(talk(demo, study), words(demo, study));
    }

    public static Talk talk(Demo demo, Study study) {
        return TalkWriter.write(stand(demo, study));
    }

    /** What the talk of a demo is written from, in the language that the demo is told in. */
    public static Stand stand(Demo demo, Study study) {
        return Stand.of(demo, study.books(), study.beside(demo));
    }

    private static Words words(Demo demo, Study study) {
        return study.words(demo.script().language());
    }
}
