package hobside.screen.advice;

import hobside.advice.Advised;
import hobside.advice.Advisor;
import hobside.advice.DoesNotHelp;
import hobside.advice.Goal;
import hobside.advice.Limits;
import hobside.advice.Myth;
import hobside.advice.Next;
import hobside.advice.Point;
import hobside.advice.Wish;
import hobside.advice.Wishes;
import hobside.file.Goals;
import hobside.file.Study;
import hobside.screen.bench.Bench;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What advice answers for one demo, each page worked out when it is first looked at and kept from then on. */
final class Answers {

    /** Grams of saturated fat a serve that a saving must come to, to be seen at all when it is written. */
    private static final double SEEN = 0.05;

    /** A limit that no cost reaches; but with a limit, foods whose price is not known are left aside, for they would look free. */
    private static final double ANY_COST = 1e9;

    private final Demo demo;
    private final Study study;
    private final Advisor advisor;
    private List<Next> next;
    private List<Point> frontier;
    private List<Myth> myths;
    private CreditRows credit;

    private Answers(Demo demo, Study study) {
        this.demo = demo;
        this.study = study;
        this.advisor = advisor(demo.limits());
    }

    private Advisor advisor(Limits limits) {
        List<Wish> wishes = Wishes.of(demo.dish(), demo.plan(), study.pantry(), study.books(), limits);
        return Advisor.of(demo.dish(), demo.plan(), wishes, study.books(), limits);
    }

    static Answers of(Bench bench) {
        return new Answers(bench.demo(), bench.desk().study());
    }

    List<Next> next(Wanted.Rank rank) {
        if (next == null) {
            next = advisor.nextBest().stream().filter(each -> each.saved() >= SEEN).toList();
        }
        List<Next> ranked = new ArrayList<>(next);
        switch (rank) {
            case SAVED -> { }
            case PER_COIN -> ranked.sort(Next.perCoin());
            case PER_MINUTE -> ranked.sort(Next.perMinute());
        }
        return ranked;
    }

    Optional<Goal> goal(Wanted wanted) {
        return Goals.parse(wanted.goal(), demo, study).value();
    }

    Optional<Advised> best(Wanted wanted) {
        return goal(wanted).flatMap(goal -> advisor.best(goal, wanted.aim()));
    }

    Advised closest() {
        return advisor.closest();
    }

    List<Point> frontier() {
        if (frontier == null) {
            frontier = advisor(Double.isNaN(demo.limits().mostExtraCost()) ? demo.limits().withMostExtraCost(ANY_COST) : demo.limits()).frontier();
        }
        return frontier;
    }

    CreditRows credit() {
        if (credit == null) {
            credit = CreditRows.of(demo, study);
        }
        return credit;
    }

    List<Myth> myths() {
        if (myths == null) {
            myths = DoesNotHelp.of(demo.dish(), demo.plan(), study.pantry(), study.books(), study.english());
        }
        return myths;
    }
}
