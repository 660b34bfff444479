package hobside.file.bring;

import hobside.file.Nearest;
import hobside.file.OwnPack;
import hobside.file.Problems;
import hobside.file.Read;
import hobside.file.Rejected;
import hobside.file.Loaded;
import hobside.file.Shown;
import hobside.file.Wanted;
import hobside.food.Food;
import hobside.food.Shelf;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Brings in a table of foods, one a row, figures per 100 g of the edible portion under their INFOODS tagnames. Any columns will
 * do as long as there is a name or an id. An empty field is a figure that is not known.
 */
public final class FoodTable {

    /** Up to here foods are kept in a file that can be read and corrected by hand; more become a pack. */
    public static final int SMALL = 1_000;

    private static final List<String> KNOWN = List.of("id", "name", "also", "group", "source", "number", "EDIBLE", "DENSITY", "ENERC", "ENERC_KCAL",
            "WATER", "PROCNT", "FAT", "FASAT", "FAMS", "FAPU", "FATRN", "CHOCDF", "SUGAR", "FIBTG", "ALC", "NA", "CHOLE");

    private final Sheet sheet;
    private final List<Heading> headings = new ArrayList<>();
    private final Notes notes;
    private final String name;

    private FoodTable(Sheet sheet, Notes notes, String name) {
        this.sheet = sheet;
        this.notes = notes;
        this.name = name;
    }

    /**
     * The review of a table; rejected when it is no table of foods at all.
     *
     * @param shelf what is there already
     * @param name the name it would be kept under: safe, free, at most 30 characters
     */
    public static Read<Review> review(Input input, Shelf shelf, String name) throws IOException {
        Problems problems = new Problems(input.name());
        Optional<Sheet> sheet = Sheet.of(input, problems);
        if (sheet.isEmpty()) {
            return new Rejected<>(problems.all());
        }
        FoodTable table = new FoodTable(sheet.get(), new Notes(problems), name);
        return table.headings() ? new Loaded<>(table.review(shelf)) : new Rejected<>(problems.all());
    }

    /** Reads the headings; false when nothing can be made of the table. */
    private boolean headings() {
        List<String> aside = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String written : sheet.headings()) {
            Heading heading = Heading.of(written);
            if (heading.kind() == Heading.Kind.WRONG_UNIT) {
                notes.fault(1, written, "a unit that does not go with this tagname", Wanted.of("g, mg or µg; kJ or kcal for energy; the column is left aside",
                        "correct the unit in the heading"));
            } else if (heading.kind() == Heading.Kind.ASIDE) {
                aside.add(written.isBlank() ? "(no heading)" : Shown.of(written));
            } else if (!seen.add(heading.meaning())) {
                notes.fault(1, written, "a second column of the same", Wanted.of("each column once; this one is left aside", "delete or rename one of them"));
                heading = Heading.ASIDE;
            }
            headings.add(heading);
        }
        boolean named = column(Heading.Kind.NAME) >= 0 || column(Heading.Kind.ID) >= 0;
        if (!named) {
            notes.problems().add(1, Shown.quoted(String.join(", ", sheet.headings())), Wanted.of("a first line with at least one of the headings name and id"
                    + " beside tagnames such as ENERC, FAT, FASAT", Nearest.hintOr(sheet.headings().get(0), KNOWN, "write the headings into the first line")));
        }
        notes.tell(sheet.told());
        if (!aside.isEmpty()) {
            notes.tell("Left aside, because the shelf does not keep them: " + Shown.of(String.join(", ", aside)) + ".");
        }
        return named;
    }

    private int column(Heading.Kind kind) {
        for (int i = 0; i < headings.size(); i++) {
            if (headings.get(i).kind() == kind) {
                return i;
            }
        }
        return -1;
    }

    private Review review(Shelf shelf) throws IOException {
        Decimals decimals = sheet.decimals(column -> column < headings.size() && headings.get(column).isFigure());
        notes.tell(decimals.told());
        FoodRow reader = new FoodRow(headings, sheet.headings(), decimals, notes);
        List<FoodRow.Found> found = new ArrayList<>();
        sheet.each(notes, rows -> reader.read(rows).ifPresentOrElse(found::add, notes::leaveOutOne));
        reader.tell();
        boolean large = found.size() > SMALL;
        Naming naming = new Naming(shelf, large ? OwnPack.prefix(name) : "");
        List<Food> foods = new ArrayList<>();
        Map<String, Integer> lines = new HashMap<>();
        for (FoodRow.Found each : found) {
            place(each, naming, lines).ifPresent(foods::add);
        }
        return notes.review(large ? new Review.Goods.Pack(name, foods) : new Review.Goods.Foods(name, name, foods));
    }

    /** Gives a food its id and says where it meets another; empty when it is not taken. */
    private Optional<Food> place(FoodRow.Found each, Naming naming, Map<String, Integer> lines) {
        Integer before = each.given() ? lines.putIfAbsent(each.id(), each.line()) : null;
        if (before != null) {
            notes.fault(each.line(), "id", "the id " + Shown.quoted(each.id()) + " a second time", Wanted.of("each id once; it stands already in line " + before,
                    "give one of the two another id"));
            notes.leaveOutOne();
            return Optional.empty();
        }
        Optional<Food> shelved = naming.shelved(each.id());
        if (shelved.isPresent() && shelved.get().equals(each.food(shelved.get().id()))) {
            notes.note(each.line(), each.label().name(), Review.Mark.ALREADY_THERE, "the very same is on the shelf already");
            return Optional.empty();
        }
        String id = naming.free(each.id());
        if (shelved.isPresent() && each.given()) {
            notes.note(each.line(), each.label().name(), Review.Mark.SAME_ID, "the shelf has another food of the id " + shelved.get().id() + "; this one becomes " + id);
        }
        naming.twin(each.label().name(), "in line " + each.line()).ifPresent(where ->
                notes.note(each.line(), each.label().name(), Review.Mark.SAME_NAME, "a food of this name is there already, " + where + "; both are kept"));
        List<String> doubts = Plausible.doubts(each.composition());
        if (!doubts.isEmpty()) {
            notes.note(each.line(), each.label().name(), Review.Mark.DOUBTFUL, String.join("; ", doubts));
        }
        notes.offerOne();
        return Optional.of(each.food(id));
    }
}
