package hobside.file;

import hobside.guide.Citation;
import hobside.guide.Component;
import hobside.guide.Guide;
import hobside.guide.Mark;
import hobside.guide.Published;
import hobside.guide.Unit;
import java.util.List;

/** The page of the daily guides, and what all published rows have in common. It is apart because the first picture needs one guide. */
final class PackedGuides {

    private static final Component[] COMPONENTS = Component.values();
    private static final Unit[] UNITS = Unit.values();
    private static final Mark[] MARKS = Mark.values();
    private static final Guide.Sense[] SENSES = Guide.Sense.values();

    private PackedGuides() {}

    static byte[] page(List<Guide> guides) {
        PackOut out = new PackOut();
        out.count(guides.size());
        for (Guide guide : guides) {
            published(guide.published(), out);
            out.text(guide.sentence());
            out.count(guide.lines().size());
            for (Guide.Line line : guide.lines()) {
                component(line.of(), out);
                out.number(line.figure());
                out.one(line.unit());
                out.one(line.sense());
            }
        }
        return out.bytes();
    }

    static List<Guide> read(PackIn in) {
        Guide[] guides = new Guide[in.count()];
        for (int i = 0; i < guides.length; i++) {
            guides[i] = guide(in);
        }
        return List.of(guides);
    }

    private static Guide guide(PackIn in) {
        Published published = published(in);
        String sentence = in.text();
        Guide.Line[] lines = new Guide.Line[in.count()];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = new Guide.Line(component(in), in.number(), unit(in), in.one(SENSES));
        }
        return new Guide(published, sentence, List.of(lines));
    }

    static void component(Component component, PackOut out) {
        out.one(component);
    }

    static Component component(PackIn in) {
        return in.one(COMPONENTS);
    }

    static Unit unit(PackIn in) {
        return in.one(UNITS);
    }

    static void published(Published published, PackOut out) {
        out.text(published.key());
        out.text(published.name());
        out.text(published.place());
        citation(published.citation(), out);
    }

    static Published published(PackIn in) {
        return new Published(in.text(), in.text(), in.text(), citation(in));
    }

    static void citation(Citation citation, PackOut out) {
        out.text(citation.source());
        out.text(citation.date());
        out.one(citation.mark());
        out.text(citation.note());
    }

    static Citation citation(PackIn in) {
        return new Citation(in.text(), in.text(), in.one(MARKS), in.text());
    }
}
