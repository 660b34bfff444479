package hobside.file;

import hobside.dish.Demo;
import hobside.talk.MarkdownScript;
import hobside.talk.Stand;
import hobside.talk.Talk;
import hobside.talk.TalkWriter;
import hobside.talk.TextScript;

/** The printed forms of a demo. */
public final class Scripts {

    private Scripts() {}

    public static String text(Demo demo, Study study) {
        return TextScript.of(talk(demo, study));
    }

    /** The text for a screen of this width. */
    public static String text(Demo demo, Study study, int width) {
        return TextScript.of(talk(demo, study), width);
    }

    public static String markdown(Demo demo, Study study) {
        return MarkdownScript.of(talk(demo, study));
    }

    public static Talk talk(Demo demo, Study study) {
        return TalkWriter.write(Stand.of(demo, study.books(), study.beside(demo.guide())));
    }
}
