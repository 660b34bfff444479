package hobside.screen.clock;

import hobside.dish.MethodStep;
import hobside.file.Limits;
import hobside.screen.Next;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Question;
import hobside.screen.ask.Question.Reply;
import hobside.talk.Script;
import hobside.talk.Setting;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;

/** What the Clock screen asks for. */
final class ClockQuestions {

    private ClockQuestions() {}

    static Next slot(ClockScreen clock) {
        Script script = clock.demo().script();
        return whole(clock, new Asked("How long is the slot?", "minutes", "All of it, with welcome and tasting; 0 when nobody has said."),
                script.pacing().slot(), minutes -> clock.changed(clock.demo().with(script.with(new Script.Pacing(script.pacing().wordsPerMinute(), minutes))), ""));
    }

    /** Hobs, then ovens, then the helper. */
    static Next hall(ClockScreen clock) {
        Setting.Hall hall = clock.setting().hall();
        return whole(clock, new Asked("How many hobs can be used at once?", "hobs", "Rings of the cooker, or single hobs on the table."), hall.hobs(),
                hobs -> whole(clock, new Asked("How many ovens?", "ovens", "0 when there is none."), hall.ovens(), ovens -> helper(clock, hobs, ovens)));
    }

    private static Next helper(ClockScreen clock, int hobs, int ovens) {
        String now = clock.setting().hall().helper() ? "yes" : "no";
        return Next.to(LineScreen.of(clock, new Question("Does somebody help you?", "yes or no", List.of("The helper then does the steps of the method while you speak."), now,
                text -> text.matches("(?i)y|yes|n|no") && hobs <= Setting.Hall.MOST && ovens <= Setting.Hall.MOST
                        ? Reply.go(clock.changed(clock.demo().with(clock.setting().with(new Setting.Hall(hobs, ovens, text.toLowerCase(Locale.ROOT).startsWith("y")))), ""))
                        : Reply.wrong(hobs > Setting.Hall.MOST || ovens > Setting.Hall.MOST ? "A hall has " + Setting.Hall.MOST + " hobs and ovens at most." : "Please write yes or no."))));
    }

    /** The minutes of a step, then for how many of them hands are busy. */
    static Next minutes(ClockScreen clock, int index) {
        MethodStep step = clock.demo().dish().method().get(index);
        return whole(clock, new Asked("How long does it take?", "minutes in all", step.words()), step.minutes(),
                minutes -> whole(clock, new Asked("For how long are hands busy with it?", "minutes of hands", "The rest of the " + minutes + " minutes it cooks by itself."),
                        Math.min(minutes, step.hands()), hands -> ClockUpdate.stepped(clock, each -> each.taking(minutes).with(each.course().handsFor(Math.min(hands, minutes))))));
    }

    static Next earliest(ClockScreen clock) {
        return hour(clock, "Not before which minute?", "The minute of the demonstration; 0 for no such limit.", true);
    }

    static Next latest(ClockScreen clock) {
        return hour(clock, "By which minute must it be over?", "The minute of the demonstration; 0 for no such limit.", false);
    }

    private static Next hour(ClockScreen clock, String title, String hint, boolean first) {
        Optional<Entry> here = clock.here().filter(entry -> !entry.key().isEmpty());
        if (here.isEmpty()) {
            return Next.to(clock.saying("There is no task on this row."));
        }
        Setting.Wanted wanted = clock.setting().of(here.get().wishKey());
        return whole(clock, new Asked(title, "minute", hint), first ? wanted.earliest() : wanted.latest(),
                minute -> ClockUpdate.wished(clock, each -> first ? each.from(minute) : each.until(minute), false));
    }

    private record Asked(String title, String label, String hint) {}

    private static Next whole(ClockScreen clock, Asked asked, int now, IntFunction<Next> then) {
        return Next.to(LineScreen.of(clock, new Question(asked.title(), asked.label(), List.of(asked.hint()), Integer.toString(now),
                text -> text.matches("\\d{1,5}") && Integer.parseInt(text) <= Limits.MINUTES ? Reply.go(then.apply(Integer.parseInt(text)))
                        : Reply.wrong("\"" + text + "\" is not a whole number from 0 to " + Limits.MINUTES + "."))));
    }
}
