package hobside.file;

import hobside.dish.Stage;
import hobside.guide.Band;
import hobside.guide.Caution;
import hobside.guide.Cautions;
import hobside.guide.Claim;
import hobside.guide.ClaimKind;
import hobside.guide.Condition;
import hobside.guide.EnergyFactors;
import hobside.guide.Guide;
import hobside.guide.GuideBook;
import hobside.guide.Per;
import hobside.guide.Trigger;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The page of the other yardsticks: energy factors, claims, bands and cautions. */
final class PackedYardsticks {

    private static final Per[] PERS = Per.values();
    private static final Stage[] STAGES = Stage.values();
    private static final ClaimKind[] CLAIMS = ClaimKind.values();
    private static final Condition.Rule[] RULES = Condition.Rule.values();
    private static final Trigger.Kind[] TRIGGERS = Trigger.Kind.values();

    private PackedYardsticks() {}

    static byte[] page(GuideBook book) {
        PackOut out = new PackOut();
        out.count(book.energy().size());
        book.energy().forEach(each -> energy(each, out));
        out.count(book.claims().size());
        book.claims().forEach(each -> claim(each, out));
        out.count(book.bands().size());
        book.bands().forEach(each -> band(each, out));
        out.count(book.cautions().all().size());
        book.cautions().all().forEach(each -> caution(each, out));
        return out.bytes();
    }

    static GuideBook read(PackIn in, List<Guide> guides) {
        List<EnergyFactors> energy = new ArrayList<>();
        for (int rest = in.count(); rest > 0; rest--) {
            energy.add(energy(in));
        }
        List<Claim> claims = new ArrayList<>();
        for (int rest = in.count(); rest > 0; rest--) {
            claims.add(claim(in));
        }
        List<Band> bands = new ArrayList<>();
        for (int rest = in.count(); rest > 0; rest--) {
            bands.add(band(in));
        }
        List<Caution> cautions = new ArrayList<>();
        for (int rest = in.count(); rest > 0; rest--) {
            cautions.add(caution(in));
        }
        return new GuideBook(energy, guides, claims, bands, Cautions.from(cautions));
    }

    private static void energy(EnergyFactors factors, PackOut out) {
        PackedGuides.published(factors.published(), out);
        perGram(factors.kilojoules(), out);
        out.yes(factors.kilocalories().column().isPresent());
        if (factors.kilocalories().column().isPresent()) {
            perGram(factors.kilocalories().column().get(), out);
        } else {
            out.number(factors.kilocalories().kilojoulesEach());
        }
    }

    private static EnergyFactors energy(PackIn in) {
        return new EnergyFactors(PackedGuides.published(in), perGram(in), in.yes()
                ? EnergyFactors.Kilocalories.of(perGram(in)) : EnergyFactors.Kilocalories.dividing(in.number()));
    }

    private static void perGram(EnergyFactors.PerGram column, PackOut out) {
        out.number(column.protein());
        out.number(column.fat());
        out.number(column.carbohydrate());
        out.number(column.fibre());
        out.number(column.alcohol());
    }

    private static EnergyFactors.PerGram perGram(PackIn in) {
        return new EnergyFactors.PerGram(in.number(), in.number(), in.number(), in.number(), in.number());
    }

    private static void claim(Claim claim, PackOut out) {
        PackedGuides.published(claim.published(), out);
        out.one(claim.kind());
        out.one(claim.per());
        out.count(claim.conditions().size());
        for (Condition condition : claim.conditions()) {
            out.one(condition.rule());
            PackedGuides.component(condition.of(), out);
            out.number(condition.figure());
            out.one(condition.unit());
        }
    }

    private static Claim claim(PackIn in) {
        var published = PackedGuides.published(in);
        ClaimKind kind = in.one(CLAIMS);
        Per per = in.one(PERS);
        Condition[] conditions = new Condition[in.count()];
        for (int i = 0; i < conditions.length; i++) {
            conditions[i] = new Condition(in.one(RULES), PackedGuides.component(in), in.number(), PackedGuides.unit(in));
        }
        return new Claim(published, kind, per, List.of(conditions));
    }

    private static void band(Band band, PackOut out) {
        PackedGuides.published(band.published(), out);
        PackedGuides.component(band.of(), out);
        out.one(band.per());
        out.number(band.edges().lowUpTo());
        out.number(band.edges().mediumUpTo());
        out.number(band.edges().portion().over());
        out.number(band.edges().portion().highAbove());
    }

    private static Band band(PackIn in) {
        return new Band(PackedGuides.published(in), PackedGuides.component(in), in.one(PERS),
                new Band.Edges(in.number(), in.number(), new Band.BigPortion(in.number(), in.number())));
    }

    private static void caution(Caution caution, PackOut out) {
        PackedGuides.published(caution.published(), out);
        out.one(caution.stage());
        out.count(caution.when().size());
        for (Trigger trigger : caution.when()) {
            out.one(trigger.kind());
            out.text(trigger.word());
        }
        out.text(caution.advice().say());
        out.count(caution.advice().figures().size());
        for (Caution.Advised figure : caution.advice().figures()) {
            out.text(figure.place());
            out.text(figure.text());
            out.number(figure.celsius().orElse(Double.NaN));
            out.count(figure.minutes().orElse(0));
            PackedGuides.citation(figure.citation(), out);
        }
    }

    private static Caution caution(PackIn in) {
        var published = PackedGuides.published(in);
        Stage stage = in.one(STAGES);
        Trigger[] when = new Trigger[in.count()];
        for (int i = 0; i < when.length; i++) {
            when[i] = new Trigger(in.one(TRIGGERS), in.text());
        }
        String say = in.text();
        Caution.Advised[] figures = new Caution.Advised[in.count()];
        for (int i = 0; i < figures.length; i++) {
            figures[i] = advised(in);
        }
        return new Caution(published, stage, List.of(when), new Caution.Advice(say, List.of(figures)));
    }

    private static Caution.Advised advised(PackIn in) {
        String place = in.text();
        String text = in.text();
        double celsius = in.number();
        int minutes = in.count();
        return new Caution.Advised(place, text, Double.isNaN(celsius) ? OptionalDouble.empty() : OptionalDouble.of(celsius),
                minutes == 0 ? OptionalInt.empty() : OptionalInt.of(minutes), PackedGuides.citation(in));
    }
}
