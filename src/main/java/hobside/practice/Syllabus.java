package hobside.practice;

import hobside.advice.Offer;
import hobside.dish.Change;
import hobside.dish.ChangeKind;
import hobside.dish.Plan;
import hobside.practice.rubric.Subject;
import hobside.talk.Demo;
import hobside.talk.Script;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Everything that can be practised with some dishes. Exercises are drawn without end: of the demo's own plan, and of plans put
 * together by a seed from all changes that make sense for the dish.
 */
public final class Syllabus {

    /** So many seeds are tried for one exercise before it is given up. */
    private static final int TRIES = 24;

    private static final int MOST_OF_A_PLAN = 4;

    private final Map<String, Demo> demos;
    private final Teaching with;
    private final Map<String, Pool> pools = new LinkedHashMap<>();
    private final Map<String, Set<Card>> cards = new LinkedHashMap<>();

    private Syllabus(Map<String, Demo> demos, Teaching with) {
        this.demos = demos;
        this.with = with;
    }

    /** Demos by the names of their dishes; what was typed into their scripts is left aside. */
    public static Syllabus of(Map<String, Demo> demos, Teaching with) {
        Map<String, Demo> plain = new LinkedHashMap<>();
        String code = with.words().language().code();
        demos.forEach((name, demo) -> plain.put(name, demo.with(Script.UNTOUCHED.in(code)).withNote("")));
        return new Syllabus(plain, with);
    }

    public Teaching with() {
        return with;
    }

    private Pool pool(String dish) {
        return pools.computeIfAbsent(dish, name -> Pool.of(demos.get(name).dish(), with));
    }

    /** Everything that can be drawn of any of the dishes, in the order in which a beginner meets it. */
    public List<Card> cards() {
        Set<Card> all = new LinkedHashSet<>();
        for (Kind kind : Kind.DRAWN) {
            for (String dish : demos.keySet()) {
                cards(dish).stream().filter(card -> card.kind() == kind).forEach(all::add);
            }
        }
        return List.copyOf(all);
    }

    private Set<Card> cards(String dish) {
        return cards.computeIfAbsent(dish, this::found);
    }

    private Set<Card> found(String dish) {
        Set<Card> all = new LinkedHashSet<>();
        Set<String> topics = new LinkedHashSet<>();
        demos.get(dish).plan().told().forEach(change -> topics.add(change.kind().word()));
        pool(dish).offers().forEach(offer -> topics.add(offer.change().kind().word()));
        for (String topic : topics) {
            List.of(Kind.GUESS, Kind.TEACH_BACK, Kind.SPOT).forEach(kind -> all.add(new Card(kind, topic)));
            if (pool(dish).of(topic).stream().anyMatch(offer -> Explanations.doesSomething(offer.effect()))) {
                all.add(new Card(Kind.EXPLAIN, topic));
            }
            if (!NOTHING_TO_SHOW.contains(topic)) {
                all.add(new Card(Kind.SHOW, topic));
            }
        }
        all.add(new Card(Kind.ORDER, Card.ORDER));
        Lesson whole = Lesson.of(demos.get(dish), with);
        Answers.questions(whole).forEach(asked -> all.add(new Card(Kind.ANSWER, Card.QUESTION + asked.key())));
        Answers.myths(whole).forEach(myth -> all.add(new Card(Kind.ANSWER, Card.MYTH + myth.key())));
        return all;
    }

    /** These bring no thing of their own to hold up. */
    private static final Set<String> NOTHING_TO_SHOW = Set.of("leave-out", "add", "cook-another-way", "rinse", "skim");

    /**
     * An exercise of this card and level, the first that can be drawn from this seed on; one of a lower level where the dishes give
     * none of this one. Empty when they give none at all.
     */
    public Optional<Exercise> draw(Card card, int level, long seed) {
        List<String> dishes = demos.keySet().stream().filter(dish -> cards(dish).contains(card)).toList();
        for (int lower = level; lower >= 1 && !dishes.isEmpty(); lower--) {
            for (long at = seed; at < seed + TRIES; at++) {
                String dish = dishes.get(Math.floorMod(at, dishes.size()));
                Optional<Exercise> drawn = exercise(new Label(card, lower, new Label.Origin(dish, at)));
                if (drawn.isPresent()) {
                    return drawn;
                }
            }
        }
        return Optional.empty();
    }

    /** The exercise of this label; empty when its dish is not among these, or gives no such exercise. */
    public Optional<Exercise> exercise(Label label) {
        String dish = label.origin().dish();
        return demos.containsKey(dish) ? lesson(label).flatMap(lesson -> drawn(lesson, label)) : Optional.empty();
    }

    private Optional<Exercise> drawn(Lesson lesson, Label label) {
        return switch (label.kind()) {
            case GUESS -> Guesses.draw(lesson, label);
            case ORDER -> Orders.draw(lesson, label, pool(label.origin().dish()));
            case EXPLAIN -> Explanations.draw(lesson, label);
            case ANSWER -> Answers.draw(lesson, label);
            case SPOT -> Faults.draw(lesson, label);
            case SHOW -> Shows.draw(lesson, label);
            case TEACH_BACK -> TeachBacks.draw(lesson, label);
            case WATCHED -> Optional.empty();
        };
    }

    /** The demo with the changes that an exercise is about: to be explained, and to be marked by. */
    public Optional<Demo> demo(Label label) {
        return lesson(label).map(Lesson::demo);
    }

    /** What an exercise in own words is marked by; empty where nothing is to be said in own words. */
    public Optional<Subject> subject(Exercise exercise) {
        Optional<Lesson> lesson = lesson(exercise.label());
        if (exercise.task() instanceof Task.Explain explain) {
            return lesson.map(known -> Subject.of(known.stand(), explain.change()));
        }
        return exercise.task() instanceof Task.Reply reply ? lesson.map(known -> Subject.of(known.stand(), reply.asked())) : Optional.empty();
    }

    private Optional<Lesson> lesson(Label label) {
        Demo demo = demos.get(label.origin().dish());
        if (demo == null) {
            return Optional.empty();
        }
        if (label.kind() == Kind.ANSWER || label.kind() == Kind.ORDER) {
            return Optional.of(Lesson.of(demo, with));
        }
        boolean own = label.origin().seed() % 2 == 0 && demo.plan().told().stream().anyMatch(change -> isOf(change, label.topic()));
        Lesson lesson = Lesson.of(own ? demo : demo.with(plan(label)), with);
        return lesson.steps(label.topic()).isEmpty() ? Optional.empty() : Optional.of(lesson);
    }

    /** A pot is bulked out once. */
    private static boolean isTwice(Change one, Change other) {
        return one.kind() == ChangeKind.BULK_OUT && other.kind() == ChangeKind.BULK_OUT;
    }

    private static boolean isOf(Change change, String topic) {
        return change.kind().word().equals(topic);
    }

    /** One change of the topic and up to three others, told in the order in which they were drawn. */
    private Plan plan(Label label) {
        Dice dice = Dice.of(label);
        Pool pool = pool(label.origin().dish());
        List<Change> changes = new ArrayList<>();
        List<Offer> those = pool.of(label.topic());
        if (!those.isEmpty()) {
            changes.add(dice.one(those).change());
        }
        int size = 1 + dice.below(MOST_OF_A_PLAN);
        List<Offer> all = dice.shuffled(pool.offers());
        for (int i = 0; i < all.size() && changes.size() < size; i++) {
            Change more = all.get(i).change();
            boolean fits = changes.stream().noneMatch(each -> each.of().equals(more.of()) || isTwice(each, more));
            if (fits) {
                changes.add(more);
            }
        }
        Plan plan = Plan.EMPTY;
        for (Change change : dice.shuffled(changes)) {
            plan = plan.with(change);
        }
        return plan;
    }
}
