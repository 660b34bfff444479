package hobside.screen.talk;

import hobside.file.Scripts;
import hobside.screen.Key;
import hobside.screen.Keys;
import hobside.screen.Next;
import hobside.screen.live.Starting;
import hobside.screen.read.ReadScreen;
import hobside.screen.desk.Work;
import hobside.talk.Cue;
import hobside.talk.Editing;
import java.util.List;
import java.util.Optional;

/** What each key does on the Talk screen. */
final class TalkUpdate {

    private TalkUpdate() {}

    static Optional<Next> of(TalkScreen talk, Key key) {
        return Keys.action(TalkAction.values(), key).map(action -> act(talk, action));
    }

    private static Next act(TalkScreen talk, TalkAction action) {
        Cue cue = talk.cue();
        Editing editing = talk.editing();
        return switch (action) {
            case WORDS -> Next.to(WordsScreen.of(talk));
            case EARLIER -> talk.edited(editing.moved(cue, -1), cue.key(), "Moved earlier.");
            case LATER -> talk.edited(editing.moved(cue, 1), cue.key(), "Moved later.");
            case ADD -> Next.to(WordsScreen.added(talk));
            case OUT -> talk.edited(editing.out(cue), cue.key(), "Left out. u brings it back, Z all that was left out.");
            case JOIN -> talk.edited(editing.joined(cue), cue.key(), "Joined with the next.");
            case KIND -> talk.edited(editing.kind(cue, next(cue.kind())), cue.key(), "");
            case MUST -> talk.edited(editing.details(cue, must(cue)), cue.key(), cue.details().must() ? "It may be dropped when time runs short." : "It must be kept.");
            case WHO -> talk.edited(editing.details(cue, cue.details().by(other(cue.details().who()))), cue.key(), "");
            case SECONDS -> TalkQuestions.seconds(talk);
            case THINGS -> TalkQuestions.things(talk);
            case CHECK -> Next.to(CheckPage.of(talk));
            case PRINT -> Next.to(ReadScreen.page(talk, "The script as it stands",
                    width -> List.of(Scripts.text(talk.bench().demo(), talk.bench().desk().study(), width).split("\n"))));
            case LANGUAGE -> TalkQuestions.language(talk);
            case HERE -> TalkQuestions.here(talk);
            case RATE -> TalkQuestions.rate(talk);
            case BACK_TO_FIRST -> talk.edited(editing.restored(cue), cue.key(), "As the program writes it.");
            case ALL_BACK -> talk.edited(editing.allBack(), cue.key(), "All that was left out is back.");
            case UNDO -> talk.bench().undone().map(next -> talk.over(next, cue.key(), "Taken back.")).orElseGet(() -> Next.to(talk.saying("There is nothing to take back.")));
            case REDO -> talk.bench().redone().map(next -> talk.over(next, cue.key(), "Done again.")).orElseGet(() -> Next.to(talk.saying("There is nothing to do again.")));
            case SAVE -> Next.doing(talk.saying("Saving..."), new Work.Save(talk.bench().demo(), talk.bench().desk().kept().name()));
            case REHEARSE -> Starting.rehearsal(talk.bench());
            case LIVE -> Starting.live(talk.bench());
            case HELP -> Next.to(ReadScreen.help(talk, "The Talk", List.of(TalkAction.values())));
            case BACK -> Next.to(talk.bench());
        };
    }

    /** Say, Do, Show, Ask and round again; a caution is put there by the program alone. */
    private static Cue.Kind next(Cue.Kind kind) {
        return switch (kind) {
            case SAY -> Cue.Kind.DO;
            case DO -> Cue.Kind.SHOW;
            case SHOW -> Cue.Kind.ASK;
            case ASK, TAKE_CARE -> Cue.Kind.SAY;
        };
    }

    private static Cue.Details must(Cue cue) {
        Cue.Details details = cue.details();
        return details.must() ? details.may() : new Cue.Details(details.who(), details.seconds(), true, details.needs());
    }

    private static Cue.Who other(Cue.Who who) {
        return switch (who) {
            case PRESENTER -> Cue.Who.HELPER;
            case HELPER -> Cue.Who.PRESENTER;
        };
    }
}
