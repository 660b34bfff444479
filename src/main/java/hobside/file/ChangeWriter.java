package hobside.file;

import hobside.dish.Add;
import hobside.dish.BulkOut;
import hobside.dish.Change;
import hobside.dish.CookAnotherWay;
import hobside.dish.CutDown;
import hobside.dish.Dilute;
import hobside.dish.Drain;
import hobside.dish.MorePeople;
import hobside.dish.Plan;
import hobside.dish.PourOff;
import hobside.dish.Skim;
import hobside.dish.SkinOff;
import hobside.dish.SmallerServe;
import hobside.dish.Swap;
import hobside.dish.Taken;
import hobside.dish.Trim;

/** Writes the changes of a plan, each on one line. */
record ChangeWriter(IngredientWriter ingredients) {

    Row row(Plan.Planned line) {
        Row row = new Row().text("change", line.change().kind().word());
        fill(row, line.change());
        row.textIfAny("note", line.note());
        return line.on() ? row : row.raw("off", "true");
    }

    private Row fill(Row row, Change change) {
        return switch (change.kind()) {
            case ADD -> ingredients.fill(row, ((Add) change).ingredient());
            case BULK_OUT -> ingredients.fill(row, ((BulkOut) change).ingredient()).number("extraServes",
                    ((BulkOut) change).extraServes());
            case LEAVE_OUT, RINSE -> row.text("of", change.of());
            case SWAP -> ingredients.helping(row.text("of", change.of()), "for", ((Swap) change).food(), ((Swap) change).quantity());
            case CUT_DOWN -> row.text("of", change.of()).number("keep", ((CutDown) change).keep());
            case DRAIN -> taken(row.text("of", change.of()), ((Drain) change).taken());
            case SKIN_OFF -> taken(row.text("of", change.of()), ((SkinOff) change).taken());
            case TRIM -> taken(row.text("of", change.of()), ((Trim) change).taken());
            case POUR_OFF -> taken(row.text("of", change.of()), ((PourOff) change).taken());
            case DILUTE -> row.text("of", change.of()).raw("water", AmountWriter.of(((Dilute) change).water().value(), "ml"))
                    .raw("poured", AmountWriter.of(((Dilute) change).poured().value(), "ml"));
            case COOK_ANOTHER_WAY -> row.text("of", change.of()).text("method", ((CookAnotherWay) change).method().word());
            case SKIM -> taken(row, ((Skim) change).taken());
            case SMALLER_SERVE -> row.number("share", ((SmallerServe) change).share());
            case MORE_PEOPLE -> row.number("extra", ((MorePeople) change).extra());
        };
    }

    private static Row taken(Row row, Taken taken) {
        taken.share().ifPresent(share -> row.number("share", share));
        taken.weighed().ifPresent(grams -> row.raw("weighed", AmountWriter.of(grams, "g")));
        return row;
    }
}
