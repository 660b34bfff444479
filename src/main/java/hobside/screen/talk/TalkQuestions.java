package hobside.screen.talk;

import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.file.WordFiles;
import hobside.screen.Next;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.ask.Question;
import hobside.screen.ask.Question.Reply;
import hobside.talk.Cue;
import hobside.talk.Script;
import java.util.Arrays;
import java.util.List;

/** What the Talk screen asks for. */
final class TalkQuestions {

    private TalkQuestions() {}

    static Next seconds(TalkScreen talk) {
        Cue cue = talk.cue();
        return Next.to(LineScreen.of(talk, new Question("How long are the hands busy?", "seconds", List.of("A whole number of seconds, beside the words; 0 for none."),
                Integer.toString(cue.details().seconds()), text -> text.matches("\\d{1,4}")
                        ? Reply.go(talk.edited(talk.editing().details(cue, cue.details().taking(Integer.parseInt(text))), cue.key(), ""))
                        : Reply.wrong("\"" + text + "\" is not a whole number of seconds, 9999 at most."))));
    }

    /** Equipment, then props. */
    static Next things(TalkScreen talk) {
        Cue cue = talk.cue();
        Cue.Needs needs = cue.details().needs();
        return Next.to(LineScreen.of(talk, new Question("What has to be at hand?", "equipment", List.of("Knives, pans, paper ... with semicolons between them; empty for none."),
                String.join("; ", needs.equipment()), tools -> Reply.go(Next.to(LineScreen.of(talk, new Question("What is shown?", "props",
                        List.of("Bowls, jars, packets ... with semicolons between them; empty for none."), String.join("; ", needs.props()),
                        props -> Reply.go(talk.edited(talk.editing().details(cue, cue.details().needing(new Cue.Needs(list(tools), list(props)))), cue.key(), "")))))))));
    }

    private static List<String> list(String text) {
        return Arrays.stream(text.split(";")).map(String::strip).filter(each -> !each.isEmpty()).toList();
    }

    static Next language(TalkScreen talk) {
        List<Menu.Row> rows = WordFiles.LANGUAGES.stream()
                .map(code -> new Menu.Row(talk.bench().desk().study().words(code).language().name(), code, "Words you typed yourself stay with the language you typed them in."))
                .toList();
        int here = Math.max(0, WordFiles.LANGUAGES.indexOf(talk.script().language()));
        return Next.to(MenuScreen.of(talk, new Menu("Tell it in", "The whole talk is written in this language; the figures are the same.", rows,
                index -> talk.changed(talk.script().in(WordFiles.LANGUAGES.get(index)), talk.cue().key(), "")), here));
    }

    static Next here(TalkScreen talk) {
        List<Ingredient> ingredients = talk.bench().ingredients();
        List<Menu.Row> rows = ingredients.stream().map(each -> new Menu.Row(Names.brief(each), talk.script().glosses().getOrDefault(each.id(), ""), each.food().name())).toList();
        return Next.to(MenuScreen.of(talk, new Menu("What we call it here", "The word stands beside the usual name, on paper and on the bench.", rows,
                index -> gloss(talk, ingredients.get(index))), 0));
    }

    private static Next gloss(TalkScreen talk, Ingredient ingredient) {
        return Next.to(LineScreen.of(talk, new Question("What is " + Names.brief(ingredient) + " called here?", "word", List.of("Empty takes the word away."),
                talk.script().glosses().getOrDefault(ingredient.id(), ""), text -> text.length() > 60 ? Reply.wrong("60 letters at most.")
                        : Reply.go(talk.changed(talk.script().withGloss(ingredient.id(), text), talk.cue().key(), "")))));
    }

    static Next rate(TalkScreen talk) {
        Script.Pacing pacing = talk.script().pacing();
        return Next.to(LineScreen.of(talk, new Question("How fast do you speak?", "words a minute", List.of("120 to 150 is a good pace before an audience; a rehearsal measures yours."),
                Integer.toString(pacing.wordsPerMinute()), text -> inRange(text, Script.Pacing.SLOWEST, Script.Pacing.FASTEST)
                        ? Reply.go(slot(talk, Integer.parseInt(text)))
                        : Reply.wrong("A whole number from " + Script.Pacing.SLOWEST + " to " + Script.Pacing.FASTEST + "."))));
    }

    private static Next slot(TalkScreen talk, int rate) {
        return Next.to(LineScreen.of(talk, new Question("How long is your slot?", "minutes", List.of("0 when there is no end to keep to."),
                Integer.toString(talk.script().pacing().slot()), text -> inRange(text, 0, 999)
                        ? Reply.go(talk.changed(talk.script().with(new Script.Pacing(rate, Integer.parseInt(text))), talk.cue().key(), ""))
                        : Reply.wrong("A whole number of minutes, 999 at most."))));
    }

    private static boolean inRange(String text, int least, int most) {
        return text.matches("\\d{1,3}") && Integer.parseInt(text) >= least && Integer.parseInt(text) <= most;
    }
}
