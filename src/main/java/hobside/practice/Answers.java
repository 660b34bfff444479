package hobside.practice;

import hobside.advice.DoesNotHelp;
import hobside.advice.Myth;
import hobside.practice.rubric.Asked;
import hobside.talk.Cue;
import hobside.talk.TalkWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Exercises in answering: a question of the audience, or a wrong claim that is put right without shaming anybody. */
final class Answers {

    /** From this level on the answer is in own words. */
    static final int IN_OWN_WORDS = 4;

    /** How many kinds of the wrong replies there are among the words. */
    private static final int WAYS = 3;

    private final Lesson lesson;
    private final Label label;
    private final Dice dice;

    private Answers(Lesson lesson, Label label) {
        this.lesson = lesson;
        this.label = label;
        this.dice = Dice.of(label);
    }

    /** A question with its true answer. */
    record Known(String key, String ask, String answer) {}

    static Optional<Exercise> draw(Lesson lesson, Label label) {
        Answers answers = new Answers(lesson, label);
        return label.topic().startsWith(Card.MYTH) ? answers.ofMyth() : answers.ofQuestion();
    }

    static List<Known> questions(Lesson lesson) {
        List<Cue> cues = TalkWriter.questions(lesson.stand());
        List<Known> all = new ArrayList<>();
        for (int i = 0; i + 1 < cues.size(); i += 2) {
            String key = cues.get(i).key();
            all.add(new Known(key.substring(key.indexOf(':') + 1, key.indexOf('/')), cues.get(i).words(), cues.get(i + 1).words()));
        }
        return all;
    }

    static List<Myth> myths(Lesson lesson) {
        return DoesNotHelp.of(lesson.demo().dish(), lesson.demo().plan(), lesson.with().pantry(), lesson.with().books(), lesson.words());
    }

    private Optional<Exercise> ofQuestion() {
        List<Known> all = questions(lesson);
        String key = label.topic().substring(Card.QUESTION.length());
        return all.stream().filter(asked -> asked.key().equals(key)).findFirst().map(asked -> question(asked, all));
    }

    private Exercise question(Known asked, List<Known> all) {
        Exercise.Prompt prompt = new Exercise.Prompt(lesson.sceneOfAll(), lesson.say("answer.question", Map.of("ask", asked.ask())));
        if (label.level() >= IN_OWN_WORDS) {
            return new Exercise(label, prompt, new Task.Reply(new Asked(asked.key(), asked.ask(), asked.answer())), List.of());
        }
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(asked.answer(), "", lesson.say("yes")));
        // The answers to others are true, but nobody asked for them; from the second level on one stands among the choices.
        Known other = dice.one(all.stream().filter(each -> !each.key().equals(asked.key())).toList());
        if (label.level() > 1) {
            choices.add(wrong(other.answer(), "beside-the-point", asked.answer()));
        }
        addWrong(choices, asked.answer());
        return new Exercise(label, prompt, new Task.Choose(dice.shuffled(choices)), List.of());
    }

    private Choice wrong(String words, String mistake, String truth) {
        return new Choice(words, mistake, lesson.say("no." + mistake) + " " + lesson.say("answer.model", Map.of("answer", truth)));
    }

    private void addWrong(List<Choice> choices, String truth) {
        choices.add(wrong(lesson.say("answer.promise." + (1 + dice.below(WAYS))), "promise", truth));
        choices.add(wrong(lesson.say("answer.scolding." + (1 + dice.below(WAYS))) + " " + truth, "scolding", truth));
    }

    private Optional<Exercise> ofMyth() {
        String key = label.topic().substring(Card.MYTH.length());
        return myths(lesson).stream().filter(myth -> myth.key().equals(key)).findFirst().map(this::myth);
    }

    private Exercise myth(Myth myth) {
        Exercise.Prompt prompt = new Exercise.Prompt(lesson.sceneOfAll(), lesson.say("answer.myth", Map.of("title", myth.title())));
        String kind = lesson.say("answer.kind." + (1 + dice.below(WAYS))) + " " + myth.said();
        if (label.level() >= IN_OWN_WORDS) {
            return new Exercise(label, prompt, new Task.Reply(new Asked(myth.key(), prompt.asked(), kind)), List.of());
        }
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(kind, "", lesson.say("yes")));
        choices.add(wrong(lesson.say("answer.agree." + (1 + dice.below(WAYS))), "agreeing", kind));
        addWrong(choices, myth.said());
        List<Choice> shown = label.level() == 1 ? choices.subList(0, 3) : choices;
        return new Exercise(label, prompt, new Task.Choose(dice.shuffled(shown)), List.of());
    }
}
