package hobside.practice;

import hobside.dish.Change;
import hobside.ledger.Step;
import hobside.measure.Range;
import hobside.talk.Cue;
import hobside.talk.Talk;
import hobside.talk.plain.Sentence;
import hobside.talk.plain.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Exercises in listening: what the talk says of a change, with one planted fault. */
final class Faults {

    private static final int WAYS = 3;

    private final Lesson lesson;
    private final Label label;
    private final Dice dice;
    private final Step step;
    private final Figured figured;

    private Faults(Lesson lesson, Label label, Step step) {
        this.lesson = lesson;
        this.label = label;
        this.dice = Dice.of(label);
        this.step = step;
        this.figured = new Figured(lesson);
    }

    static Optional<Exercise> draw(Lesson lesson, Label label) {
        return lesson.steps(label.topic()).stream().findFirst().flatMap(step -> new Faults(lesson, label, step).of());
    }

    /** What the talk says of the change, sentence by sentence, with the place of the planted fault. */
    private record Extract(List<String> sentences, int faulty, Fault fault, String truth) {}

    /** A spoken sentence of the talk and whether it is a caution. */
    private record Said(String words, boolean care) {}

    private Optional<Exercise> of() {
        Optional<Talk.Section> section = lesson.section(step.planned().change());
        return section.flatMap(known -> planted(said(known))).map(this::exercise);
    }

    private static List<Said> said(Talk.Section section) {
        List<Said> all = new ArrayList<>();
        for (Cue cue : section.cues()) {
            if (cue.kind().isSpoken()) {
                for (Sentence sentence : Sentences.of(cue.words())) {
                    all.add(new Said(sentence.text(), cue.isCaution()));
                }
            }
        }
        return all;
    }

    /** What is easy to hear comes first: promises and absolutes, then directions and figures, last what is missing. */
    private List<Fault> levels() {
        return switch (label.level()) {
            case 1 -> List.of(Fault.PROMISE);
            case 2 -> List.of(Fault.PROMISE, Fault.ABSOLUTE);
            case 3 -> List.of(Fault.DIRECTION, Fault.ABSOLUTE);
            case 4 -> List.of(Fault.FIGURE, Fault.DIRECTION);
            default -> List.of(Fault.values());
        };
    }

    private Optional<Extract> planted(List<Said> said) {
        for (Fault fault : dice.shuffled(levels())) {
            Optional<Extract> extract = planted(fault, said);
            if (extract.isPresent()) {
                return extract;
            }
        }
        return Optional.empty();
    }

    private Optional<Extract> planted(Fault fault, List<Said> said) {
        return switch (fault) {
            case PROMISE, ABSOLUTE -> Optional.of(added(fault, said));
            case FIGURE -> figure(said);
            case DIRECTION -> direction(said);
            case LOST_CAUTION -> lost(said);
        };
    }

    private static List<String> words(List<Said> said) {
        return new ArrayList<>(said.stream().map(Said::words).toList());
    }

    /** One sentence more, behind any but the first. */
    private Extract added(Fault fault, List<Said> said) {
        List<String> words = words(said);
        int at = 1 + dice.below(words.size());
        words.add(at, lesson.say("spot." + fault.word() + "." + (1 + dice.below(WAYS)), Map.of("title", lesson.title(step.planned().change()))));
        return new Extract(words, at, fault, lesson.say("spot.truth." + fault.word()));
    }

    /** Three times as much, or a third: what a plate is said to lose no longer fits what it had and has. */
    private Optional<Extract> figure(List<Said> said) {
        Range saved = Facet.SATURATED.saved(step.told());
        String true_ = lesson.section(step.planned().change()).map(section -> section.figures().getOrDefault("saved", "")).orElse("");
        double wrong = dice.below(2) == 0 ? saved.typical() * 3 : saved.typical() / 3;
        boolean clear = saved.typical() >= 1.5 && !saved.holds(wrong);
        String put = lesson.speech().grams(Range.of(wrong * 0.99, wrong, wrong * 1.01));
        return clear ? replaced(said, Fault.FIGURE, true_, put) : Optional.empty();
    }

    private Optional<Extract> replaced(List<Said> said, Fault fault, String was, String put) {
        List<String> words = words(said);
        for (int i = 0; i < words.size(); i++) {
            if (!was.isEmpty() && !said.get(i).care() && words.get(i).contains(was) && !was.equals(put)) {
                words.set(i, words.get(i).replace(was, put));
                return Optional.of(new Extract(words, i, fault, figured.truth(Facet.SATURATED, step.told())));
            }
        }
        return Optional.empty();
    }

    /** The energy or the cost is told the other way round. */
    private Optional<Extract> direction(List<Said> said) {
        for (Facet facet : dice.shuffled(List.of(Facet.ENERGY, Facet.COST))) {
            Optional<Facet.Way> way = facet.way(step.told()).filter(each -> each != Facet.Way.STAYS);
            Optional<Extract> turned = way.flatMap(each -> turned(said, facet, each));
            if (turned.isPresent()) {
                return turned;
            }
        }
        return Optional.empty();
    }

    private Optional<Extract> turned(List<Said> said, Facet facet, Facet.Way way) {
        Map<String, String> figures = lesson.section(step.planned().change()).map(Talk.Section::figures).orElse(Map.of());
        String true_ = filled("talk." + facet.word() + "." + way.word(), figures);
        String false_ = filled("talk." + facet.word() + "." + (way == Facet.Way.DOWN ? "up" : "down"), figures);
        return replaced(said, Fault.DIRECTION, true_, false_)
                .map(extract -> new Extract(extract.sentences(), extract.faulty(), extract.fault(), figured.truth(facet, step.told())));
    }

    private String filled(String key, Map<String, String> figures) {
        return lesson.words().filled(lesson.words().find(key).orElse(""), gap -> Optional.ofNullable(figures.get(gap)));
    }

    /** All that has to be said for safety is left out. */
    private Optional<Extract> lost(List<Said> said) {
        List<String> kept = new ArrayList<>(said.stream().filter(each -> !each.care()).map(Said::words).toList());
        String left = String.join(" ", said.stream().filter(Said::care).map(Said::words).toList());
        return left.isEmpty() ? Optional.empty()
                : Optional.of(new Extract(kept, kept.size(), Fault.LOST_CAUTION, lesson.say("spot.truth.lost-caution", Map.of("care", left))));
    }

    private Exercise exercise(Extract extract) {
        List<String> sentences = new ArrayList<>(extract.sentences());
        sentences.add(lesson.say("spot.missing"));
        List<Choice> faults = new ArrayList<>();
        for (Fault fault : Fault.values()) {
            boolean right = fault == extract.fault();
            String feedback = (right ? lesson.say("yes") : lesson.say("spot.is", Map.of("fault", lesson.say("fault." + extract.fault().word())))) + " " + extract.truth();
            faults.add(new Choice(lesson.say("fault." + fault.word()), right ? "" : "fault-" + fault.word(), feedback));
        }
        Change change = step.planned().change();
        Exercise.Prompt prompt = new Exercise.Prompt(lesson.scene(step), lesson.say("spot.ask", Map.of("title", lesson.title(change))));
        return new Exercise(label, prompt, new Task.Spot(sentences, extract.faulty(), extract.fault(), new Task.Choose(faults)), List.of());
    }
}
