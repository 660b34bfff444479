package hobside.screen.advice;

import hobside.advice.Limits;
import hobside.advice.Telling;
import hobside.dish.Ingredient;
import hobside.dish.Names;
import hobside.file.Goals;
import hobside.screen.Next;
import hobside.screen.ask.LineScreen;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.ask.Question;
import hobside.screen.ask.Question.Reply;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** What advice asks for: the goal, what must stay, and how far it may go. */
final class AdviceQuestions {

    private AdviceQuestions() {}

    static Next goal(AdviceScreen advice) {
        return Next.to(LineScreen.of(advice, new Question("What is to be reached?", "goal", List.of("Such as: " + Goals.EXAMPLES + "."), advice.wanted().goal(), text -> {
            Goals.Parsed parsed = Goals.parse(text, advice.bench().demo(), advice.bench().desk().study());
            return parsed.value().isPresent() ? Reply.go(Next.to(advice.asking(advice.wanted().reaching(text)))) : Reply.wrong(parsed.problem());
        })));
    }

    private static Next limited(AdviceScreen advice, Limits limits) {
        return advice.over(advice.bench().changed(advice.bench().demo().with(limits), ""), "");
    }

    /** Each ingredient in turn: may be exchanged, must stay what it is, may not be touched at all. */
    static Next keep(AdviceScreen advice) {
        return keep(advice, 0);
    }

    private static Next keep(AdviceScreen advice, int cursor) {
        List<Ingredient> ingredients = advice.bench().demo().dish().ingredients();
        Limits limits = advice.limits();
        List<Menu.Row> rows = ingredients.stream().map(each -> new Menu.Row(Names.brief(each), word(limits, each.id()),
                "Enter goes on: free, must stay (it may be trimmed, drained, thinned), untouched.")).toList();
        return Next.to(MenuScreen.of(advice, new Menu("Without it, it is not our dish", "Enter changes a row; Escape goes back.", rows, index -> {
            Next next = limited(advice, turned(limits, ingredients.get(index).id()));
            return new Next(next.screen().map(screen -> screen instanceof AdviceScreen changed ? keep(changed, index).screen().orElseThrow() : screen), next.effects());
        }), cursor));
    }

    private static String word(Limits limits, String id) {
        return limits.untouched().contains(id) ? "untouched" : limits.keep().contains(id) ? "must stay" : "";
    }

    private static Limits turned(Limits limits, String id) {
        Set<String> keep = new HashSet<>(limits.keep());
        Set<String> untouched = new HashSet<>(limits.untouched());
        if (untouched.remove(id)) {
            return limits.keeping(keep, untouched);
        }
        if (keep.remove(id)) {
            untouched.add(id);
        } else {
            keep.add(id);
        }
        return limits.keeping(keep, untouched);
    }

    /** A limit that can be changed: its name, how it stands, and the question or step that changes it. */
    private record Limit(String name, String now, Function<AdviceScreen, Next> change) {}

    static Next limits(AdviceScreen advice) {
        List<Limit> all = all(advice.limits());
        List<Menu.Row> rows = all.stream().map(limit -> new Menu.Row(limit.name(), limit.now(), "Enter changes it.")).toList();
        return Next.to(MenuScreen.of(advice, new Menu("How far it may go", "Enter changes a row; Escape goes back.", rows, index -> all.get(index).change().apply(advice)), 0));
    }

    private static List<Limit> all(Limits now) {
        List<Limit> all = new ArrayList<>();
        all.add(new Limit("taste", taste(now.taste()), advice -> limited(advice, now.withTaste((now.taste() + 1) % 4))));
        all.add(new Limit("new allergens", now.newAllergens() ? "allowed" : "none", advice -> limited(advice, now.withNewAllergens(!now.newAllergens()))));
        all.add(new Limit("more plates, smaller serves", now.sharing() ? "allowed" : "no", advice -> limited(advice, now.withSharing(!now.sharing()))));
        all.add(new Limit("most changes", now.mostChanges() == 0 ? "any" : Integer.toString(now.mostChanges()),
                advice -> number(advice, "Most changes (0 = any)", now.mostChanges(), value -> now.withMostChanges((int) value))));
        all.add(new Limit("most extra minutes", now.mostMinutes() < 0 ? "any" : now.mostMinutes() + " min",
                advice -> number(advice, "Most extra minutes (empty = any)", Math.max(-1, now.mostMinutes()), value -> now.withMostMinutes((int) value))));
        all.add(new Limit("most extra cost a serve", Double.isNaN(now.mostExtraCost()) ? "any" : Math.round(now.mostExtraCost()) + " smallest coins",
                advice -> number(advice, "Most extra cost a serve, in the smallest coin (empty = any)", now.mostExtraCost(), now::withMostExtraCost)));
        all.add(new Limit("most water stirred in", Double.isNaN(now.mostWater()) ? "any" : Math.round(now.mostWater()) + " ml",
                advice -> number(advice, "Most water, ml (empty = any)", now.mostWater(), now::withMostWater)));
        all.add(new Limit("least meat a serve", Double.isNaN(now.leastMeat()) ? "any" : Math.round(now.leastMeat()) + " g",
                advice -> number(advice, "Least raw meat a serve, g (empty = any)", now.leastMeat(), now::withLeastMeat)));
        return all;
    }

    private static String taste(int taste) {
        return switch (taste) {
            case 0 -> "handling only";
            case 1 -> "other foods too";
            case 2 -> "other main foods too";
            default -> "anything";
        };
    }

    private interface With {
        Limits of(double value);
    }

    /** A number; nothing typed means no limit. */
    private static Next number(AdviceScreen advice, String label, double now, With then) {
        String first = Double.isNaN(now) || now < 0 ? "" : Long.toString(Math.round(now));
        return Next.to(LineScreen.of(advice, new Question("How far it may go", label, List.of("A whole number, 9999 at most."), first, text -> {
            if (text.isEmpty()) {
                return Reply.go(limited(advice, then.of(label.contains("minutes") ? -1 : label.contains("changes") ? 0 : Double.NaN)));
            }
            return text.matches("\\d{1,4}") ? Reply.go(limited(advice, then.of(Integer.parseInt(text)))) : Reply.wrong("\"" + text + "\" is not a whole number, 9999 at most.");
        })));
    }

    static Next telling(AdviceScreen advice) {
        List<Menu.Row> rows = List.of(new Menu.Row("largest first", "", "The change with the largest fair share opens the story."),
                new Menu.Row("cheapest first", "", "What costs nothing comes first."), new Menu.Row("kitchen order", "", "As the hands do it."));
        return Next.to(MenuScreen.of(advice, new Menu("In which order is it told?", "The totals at the end are the same in any order.", rows,
                index -> AdviceUpdate.told(advice, Telling.values()[index])), 0));
    }
}
