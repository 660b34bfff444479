package hobside.screen.practice;

import hobside.file.Practices;
import hobside.practice.Attempt;
import hobside.practice.Card;
import hobside.practice.Entry;
import hobside.practice.Exercise;
import hobside.practice.Points;
import hobside.practice.Progress;
import hobside.practice.Results;
import hobside.practice.Syllabus;
import hobside.practice.Task;
import hobside.practice.Teaching;
import hobside.practice.WorkshopSet;
import hobside.practice.rubric.Rubric;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.talk.Demo;
import hobside.talk.Script;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The practice room over the Bench: what was practised so far, what is drawn from, and the set that the group works at.
 *
 * @param now when something was last heard from the disk, in milliseconds since 1970
 */
public record Room(Bench bench, Kept kept, Syllabus syllabus, long now) {

    /** What stands on the disk, and the set in use. */
    public record Kept(Results results, Map<String, Demo> demos, List<Practices.Prepared> sets, Optional<WorkshopSet> set) {}

    /** In the language of the talk on the Bench. */
    static Room of(Bench bench, Answer.Practised practised) {
        Map<String, Demo> demos = new LinkedHashMap<>();
        String own = bench.desk().kept().name();
        demos.put(own.isEmpty() ? "bench" : own, bench.demo());
        demos.putAll(practised.demos());
        Kept kept = new Kept(practised.found().results(), demos, practised.sets(), Optional.empty());
        return made(bench, kept, bench.demo().script().language(), practised.told().now());
    }

    private static Room made(Bench bench, Kept kept, String language, long now) {
        WorkshopSet.Wanted wanted = kept.set().map(WorkshopSet::wanted).orElse(WorkshopSet.Wanted.ANYTHING);
        Map<String, Demo> demos = new LinkedHashMap<>(kept.demos());
        demos.keySet().removeIf(name -> !wanted.allowsDish(name));
        Map<String, Demo> some = demos.isEmpty() ? kept.demos() : demos;
        var study = bench.desk().study();
        Demo told = bench.demo().with(Script.UNTOUCHED.in(language));
        return new Room(bench, kept, Syllabus.of(some, new Teaching(study.books(), study.pantry(), study.beside(told))), now);
    }

    public String language() {
        return syllabus.with().words().language().code();
    }

    Room in(String code) {
        return made(bench, kept, code, now);
    }

    /** The group works at this set from now on; empty for whatever comes. */
    public Room at(Optional<WorkshopSet> set) {
        Kept other = new Kept(kept.results(), kept.demos(), kept.sets(), set);
        return made(bench, other, set.map(WorkshopSet::language).orElse(language()), now);
    }

    /** The same room after news from the disk; what is drawn from stays as it is. */
    public Room hearing(Answer.Practised practised) {
        Kept other = new Kept(practised.found().results(), kept.demos(), practised.sets(), kept.set());
        return new Room(bench, other, syllabus, practised.told().now());
    }

    public Room hearing(Entry entry) {
        Kept other = new Kept(kept.results().merged(Results.of(List.of(entry))), kept.demos(), kept.sets(), kept.set());
        return new Room(bench, other, syllabus, Math.max(now, entry.at()));
    }

    Room over(Bench other) {
        return new Room(other, kept, syllabus, now);
    }

    public List<String> trainees() {
        return kept.results().trainees();
    }

    List<Attempt> of(String trainee) {
        return kept.results().of(trainee);
    }

    /** The next exercise of a trainee, and why it is this one. */
    Optional<Asking> next(String trainee) {
        WorkshopSet.Wanted wanted = kept.set().map(WorkshopSet::wanted).orElse(WorkshopSet.Wanted.ANYTHING);
        List<Card> cards = new ArrayList<>(syllabus.cards().stream().filter(wanted::allows).toList());
        Progress progress = Progress.of(of(trainee));
        Optional<Progress.Next> next = progress.next(cards, now);
        while (next.isPresent()) {
            Optional<Exercise> drawn = drawn(next.get(), wanted);
            if (drawn.isPresent()) {
                return Optional.of(new Asking(this, trainee, drawn.get(), next.get().reason()));
            }
            // These dishes give no such exercise by this seed: what comes next after it is asked for.
            cards.remove(next.get().card());
            next = progress.next(cards, now);
        }
        return Optional.empty();
    }

    private Optional<Exercise> drawn(Progress.Next next, WorkshopSet.Wanted wanted) {
        int level = wanted.level() == 0 ? next.level() : wanted.level();
        Optional<Exercise> drawn = syllabus.draw(next.card(), level, next.seed());
        boolean fair = drawn.isEmpty() || !(drawn.get().task() instanceof Task.Reply) || isFair(drawn.get());
        return fair ? drawn : syllabus.draw(next.card(), CHOOSING, next.seed());
    }

    /** The hardest level on which an answer is still chosen and not written. */
    private static final int CHOOSING = 3;

    private boolean isFair(Exercise exercise) {
        Rubric rubric = rubric(exercise);
        return Points.isFair(rubric.mark(rubric.model().text()), Points.asked(exercise.label()));
    }

    /** What marks an exercise in own words. */
    Rubric rubric(Exercise exercise) {
        Demo demo = syllabus.demo(exercise.label()).orElseThrow();
        return Rubric.of(syllabus.subject(exercise).orElseThrow(), bench.desk().study().rubric(demo.script()));
    }
}
