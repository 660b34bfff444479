package hobside.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a hand does to the cues of a talk: each answers with the script changed, or says in a sentence why it cannot be done. */
public final class Editing {

    private final Talk talk;
    private final Script script;

    public Editing(Talk talk, Script script) {
        this.talk = talk;
        this.script = script;
    }

    /** The script after an edit, or the reason why there was none. */
    public record Outcome(Script script, String refusal) {

        static Outcome done(Script script) {
            return new Outcome(script, "");
        }

        public boolean isRefused() {
            return !refusal.isEmpty();
        }
    }

    private Outcome refused(String why) {
        return new Outcome(script, why);
    }

    private Edit edit(Cue cue) {
        return script.edit(cue.key()).orElseGet(() -> Edit.of(cue.key()));
    }

    public Outcome worded(Cue cue, String words) {
        return words.isBlank() ? refused("A cue needs words; press x to leave it out.") : Outcome.done(script.with(edit(cue).saying(script.language(), words.strip())));
    }

    public Outcome kind(Cue cue, Cue.Kind kind) {
        Edit edit = edit(cue);
        return cue.isCaution() ? refused("A caution stays a caution. Press a to add a cue beside it.") : Outcome.done(script.with(edit.with(edit.traits().with(kind))));
    }

    public Outcome details(Cue cue, Cue.Details details) {
        if (cue.isCaution() && !details.must()) {
            return refused("A caution must be said; it cannot be dropped.");
        }
        Edit edit = edit(cue);
        return Outcome.done(script.with(edit.with(edit.traits().with(details))));
    }

    /** Leaves a cue out; one of one's own is taken away. A caution can be put in other words, but not left out. */
    public Outcome out(Cue cue) {
        if (cue.isCaution()) {
            return refused("A caution cannot be left out. Enter puts it in your own words, < and > move it.");
        }
        Edit edit = edit(cue);
        return Outcome.done(cue.isOwn() ? script.without(cue.key()) : script.with(edit.with(edit.traits().out(true))));
    }

    /** As the program writes it again. */
    public Outcome restored(Cue cue) {
        if (script.edit(cue.key()).isEmpty()) {
            return refused("This cue is as the program writes it.");
        }
        return cue.isOwn() ? refused("This cue is your own. Press x to take it away.") : Outcome.done(script.without(cue.key()));
    }

    /** Everything that was left out is back. */
    public Outcome allBack() {
        List<Edit> gone = script.edits().stream().filter(edit -> edit.traits().out()).toList();
        Script back = script;
        for (Edit edit : gone) {
            back = back.with(edit.with(edit.traits().out(false)));
        }
        return gone.isEmpty() ? refused("Nothing has been left out.") : Outcome.done(back);
    }

    /** A new cue after this one. */
    public Outcome added(Cue after, Cue.Kind kind, String words) {
        if (words.isBlank()) {
            return refused("A cue needs words.");
        }
        return Outcome.done(script.with(Edit.own(script.freshKey(), new Edit.Place(section(after).key(), after.key()), kind, Map.of(script.language(), words.strip()))));
    }

    /** Two cues out of one: the second takes the words after the place of the split. */
    public Outcome split(Cue cue, String first, String second) {
        if (cue.isCaution()) {
            return refused("A caution stays in one piece, so that no half of it can be lost.");
        }
        if (first.isBlank() || second.isBlank()) {
            return refused("There must be words before and after the place of the split.");
        }
        Script shorter = script.with(edit(cue).saying(script.language(), first.strip()));
        Edit own = Edit.own(shorter.freshKey(), new Edit.Place(section(cue).key(), cue.key()), cue.kind(), Map.of(script.language(), second.strip()));
        return Outcome.done(shorter.with(own.with(own.traits().with(cue.details().taking(0)))));
    }

    /** This cue and the next of its section as one. A caution is not swallowed. */
    public Outcome joined(Cue cue) {
        Optional<Cue> next = neighbour(cue, 1);
        if (next.isEmpty()) {
            return refused("It is the last of its section; there is nothing to join it with.");
        }
        if (next.get().isCaution()) {
            return refused("The next cue is a caution and stays by itself.");
        }
        Cue.Details both = cue.details().taking(cue.details().seconds() + next.get().details().seconds());
        Edit edit = edit(cue).saying(script.language(), cue.raw() + " " + next.get().raw());
        Script longer = script.with(edit.with(edit.traits().with(both)));
        return new Editing(talk, longer).out(next.get());
    }

    /** One place earlier (-1) or later (+1); over the edge of its section into the next one. */
    public Outcome moved(Cue cue, int by) {
        List<Cue> here = section(cue).cues();
        int to = here.indexOf(cue) + by;
        int section = talk.sections().indexOf(section(cue));
        if (to >= 0 && to < here.size()) {
            List<Cue> others = new ArrayList<>(here);
            others.remove(cue);
            return placed(cue, section, to == 0 ? "" : others.get(to - 1).key());
        }
        int other = section + by;
        if (other < 0 || other >= talk.sections().size()) {
            return refused("It cannot go any further that way.");
        }
        List<Cue> there = talk.sections().get(other).cues();
        return placed(cue, other, by > 0 || there.isEmpty() ? "" : there.get(there.size() - 1).key());
    }

    private Outcome placed(Cue cue, int section, String after) {
        Edit edit = edit(cue).at(new Edit.Place(talk.sections().get(section).key(), after));
        return Outcome.done(script.without(cue.key()).with(edit));
    }

    private Talk.Section section(Cue cue) {
        return talk.sections().stream().filter(section -> section.cues().contains(cue)).findFirst().orElseThrow();
    }

    private Optional<Cue> neighbour(Cue cue, int by) {
        List<Cue> here = section(cue).cues();
        int at = here.indexOf(cue) + by;
        return at >= 0 && at < here.size() ? Optional.of(here.get(at)) : Optional.empty();
    }

    /** Edits whose cue is not in the talk at present, because its change is out of the plan. */
    public List<Edit> waiting() {
        return script.edits().stream().filter(edit -> !edit.traits().out())
                .filter(edit -> talk.cues().stream().noneMatch(cue -> cue.key().equals(edit.cue()))).toList();
    }
}
