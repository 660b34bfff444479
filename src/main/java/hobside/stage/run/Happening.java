package hobside.stage.run;

import hobside.measure.Worded;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing that happened in a run.
 *
 * @param at milliseconds since the run began, by the clock of the hall
 * @param cue the key of the cue, or of the caution, that it is about; empty when it is about none or about the cue one is on
 * @param text what goes with it; see {@link What}
 */
public record Happening(long at, What what, String cue, String text) {

    /** What can happen. Some words of it stand in files for good. */
    public enum What implements Worded {
        /** The cue is done, on to the next. */
        ON("on"),
        /** Back to the cue before; the cue named is the one to go back to, or the one that is left. */
        BACK("back"),
        /** To the cue named. */
        JUMP("jump"),
        /** The cue is not said; on to the next. */
        SKIP("skip"),
        /** What the cue does has been done already. */
        ALREADY("already"),
        PAUSE("pause"),
        GO_ON("go-on"),
        /** The presenter stumbled at the cue. */
        STUMBLED("stumbled"),
        /** The presenter finds the cue too long. */
        TOO_LONG("too-long"),
        /** Something to remember: the text. */
        NOTE("note"),
        /** Cues that are left out to end in time: the text holds their keys, see {@link Happening#keys}. */
        DROPPED("dropped"),
        /** Dropped cues are back: the text holds their keys; all of them when it is empty. */
        TAKEN_BACK("taken-back"),
        /** A change tried out on the way is part of the demo now: the text says which. */
        KEPT("kept"),
        /** A question from the audience: the text. */
        ASKED("asked"),
        /** The presenter was asked whether a caution has been seen to; the cue is the key of the caution. */
        CARE_ASKED("care-asked"),
        /** A caution has been seen to, such as a core temperature that was reached; the cue is the key of the caution. */
        CARE_DONE("care-done"),
        /** Samples are out of the fridge or off the heat from now on. */
        OUT("out"),
        /** The time taken so far is set by hand: the text holds it in milliseconds. */
        CLOCK("clock"),
        /** The program had stopped in the middle and goes on now. */
        RESUMED("resumed"),
        OVER("over");

        private final String word;

        What(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }

        /** Whether it tells or asks something and leaves the place and the clock alone. */
        public boolean isRemark() {
            return switch (this) {
                case STUMBLED, TOO_LONG, NOTE, KEPT, ASKED, CARE_ASKED, CARE_DONE, OUT -> true;
                case ON, BACK, JUMP, SKIP, ALREADY, PAUSE, GO_ON, DROPPED, TAKEN_BACK, CLOCK, RESUMED, OVER -> false;
            };
        }
    }

    /** The keys in its text, one a line. */
    public List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (int from = 0; from < text.length();) {
            int end = text.indexOf('\n', from) < 0 ? text.length() : text.indexOf('\n', from);
            if (end > from) {
                keys.add(text.substring(from, end));
            }
            from = end + 1;
        }
        return keys;
    }

    /** The text that holds these keys. */
    public static String text(List<String> keys) {
        return String.join("\n", keys);
    }

    Happening at(long other) {
        return new Happening(other, what, cue, text);
    }
}
