package hobside.talk.check;

import hobside.Bundle;
import hobside.Csv;
import hobside.talk.Demo;
import hobside.file.Kitchen;
import hobside.file.Scripts;
import hobside.food.Nutrient;
import hobside.ledger.Basis;
import hobside.ledger.Comparison;
import hobside.ledger.Totals;
import hobside.talk.Rounded;
import hobside.talk.Stand;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The planted wrong and the true sentences, and the finished demo of the rib pot that they speak of. */
final class Corpus {

    static final Demo RIBS = demo("lighter-rib-pot");
    static final Stand STAND = stand(RIBS);

    /** One sentence of a table. */
    record Row(String set, String kind, Place place, String words) {}

    private Corpus() {}

    /** A check of the rib pot, made anew each time, so that a fault in the making is seen by each test. */
    static TruthCheck check() {
        return TruthCheck.of(Facts.of(STAND, Bundle.STUDY.published()));
    }

    /** What kinds of findings a sentence meets with at a place, a blank between them; empty when it passes. */
    static String kinds(String place, String words) {
        return String.join(" ", check().check(words, place(place)).stream().map(finding -> finding.kind().name()).toList());
    }

    static Demo demo(String name) {
        Path home = Path.of("target", "no-such-kitchen");
        return Kitchen.at(home).demo("scripts/" + name + ".demo.json", Bundle.STUDY.shelf()).value().orElseThrow();
    }

    static Stand stand(Demo demo) {
        return Stand.of(demo, Bundle.STUDY.books(), Bundle.STUDY.beside(demo));
    }

    static List<hobside.talk.Talk.Section> sections(Demo demo) {
        return Scripts.talk(demo, Bundle.STUDY).sections();
    }

    static List<Row> planted(String set) {
        return Csv.beside(Corpus.class, "/check/planted.csv").rows().stream().filter(row -> row.text("set").equals(set))
                .map(row -> new Row(set, row.text("kind"), place(row.text("place")), row.text("words"))).toList();
    }

    static List<Row> sound(String set) {
        return Csv.beside(Corpus.class, "/check/true.csv").rows().stream().filter(row -> row.text("set").equals(set))
                .map(row -> new Row(set, "", place(row.text("place")), filled(row.text("words")))).toList();
    }

    static Place place(String words) {
        return switch (words) {
            case "whole" -> Place.WHOLE;
            case "welcome" -> Place.WELCOME;
            case "recap" -> Place.RECAP;
            default -> Place.step(Integer.parseInt(words.substring("step ".length())) - 1);
        };
    }

    private static String filled(String words) {
        String full = words;
        for (Map.Entry<String, String> figure : FIGURES.entrySet()) {
            full = full.replace("{" + figure.getKey() + "}", figure.getValue());
        }
        if (full.contains("{")) {
            throw new IllegalArgumentException("no figure for " + full);
        }
        return full;
    }

    private static final Map<String, String> FIGURES = figures();

    private static Map<String, String> figures() {
        Map<String, String> figures = new LinkedHashMap<>();
        Comparison whole = STAND.ledger().whole();
        saturated(figures, "", whole);
        for (int i = 0; i < 4; i++) {
            saturated(figures, "step" + (i + 1) + ".", STAND.ledger().steps().get(i).told());
        }
        around(figures, "kcal", whole, Nutrient.ENERC_KCAL, Basis.SERVE);
        around(figures, "kj", whole, Nutrient.ENERC, Basis.SERVE);
        around(figures, "pot", whole, Nutrient.FASAT, Basis.POT);
        tenths(figures, "hundred", whole, Nutrient.FASAT);
        figures.put("salt.saved", said(whole.saved(Nutrient.NA, Basis.SERVE).typical() * 0.0025, 0.1));
        figures.put("spoons", said(whole.saved(Nutrient.FAT, Basis.SERVE).typical() / 4.6, 1));
        figures.put("cost.before", said(whole.before().used(Basis.SERVE).typical() / 100, 0.05));
        figures.put("cost.after", said(whole.after().used(Basis.SERVE).typical() / 100, 0.05));
        figures.put("cost.saved", said(whole.savedCost(Basis.SERVE).typical() / 100, 0.05));
        return figures;
    }

    private static void saturated(Map<String, String> figures, String prefix, Comparison pair) {
        figures.put(prefix + "before", said(of(pair.before(), Nutrient.FASAT, Basis.SERVE), 1));
        figures.put(prefix + "after", said(of(pair.after(), Nutrient.FASAT, Basis.SERVE), 1));
        figures.put(prefix + "saved", said(pair.saved(Nutrient.FASAT, Basis.SERVE).typical(), 1));
    }

    private static void around(Map<String, String> figures, String name, Comparison pair, Nutrient nutrient, Basis basis) {
        double step = nutrient == Nutrient.FASAT ? 1 : 10;
        figures.put(name + ".before", said(of(pair.before(), nutrient, basis), step));
        figures.put(name + ".after", said(of(pair.after(), nutrient, basis), step));
        figures.put(name + ".saved", said(pair.saved(nutrient, basis).typical(), step));
    }

    private static void tenths(Map<String, String> figures, String name, Comparison pair, Nutrient nutrient) {
        figures.put(name + ".before", said(of(pair.before(), nutrient, Basis.HUNDRED_GRAMS), 0.1));
        figures.put(name + ".after", said(of(pair.after(), nutrient, Basis.HUNDRED_GRAMS), 0.1));
    }

    private static double of(Totals totals, Nutrient nutrient, Basis basis) {
        return totals.of(nutrient, basis).typical();
    }

    private static String said(double value, double step) {
        return Rounded.written(Math.round(value / step) * step);
    }
}
