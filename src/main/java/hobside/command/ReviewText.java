package hobside.command;

import hobside.file.Own;
import hobside.file.bring.RecipeDraft;
import hobside.file.bring.Review;
import java.util.List;

/** A review as text: how it was read, what to look at, what is wrong, and what would be taken. */
final class ReviewText {

    /** Of each kind of remark so many are printed; of the rest it is said how many they are. */
    private static final int MOST = 20;

    private ReviewText() {}

    static String of(Review review) {
        StringBuilder text = new StringBuilder(review.file()).append('\n');
        review.told().forEach(sentence -> text.append("  ").append(sentence).append('\n'));
        if (review.goods() instanceof Review.Goods.Recipe recipe) {
            lines(text, recipe.draft());
        } else {
            for (Review.Mark mark : Review.Mark.values()) {
                noted(text, heading(mark), review.noted().stream().filter(each -> each.mark() == mark).toList());
            }
        }
        if (!review.faults().isEmpty()) {
            text.append("Faults:\n");
            review.faults().forEach(fault -> text.append("  ").append(fault.written()).append('\n'));
        }
        return text.append(counted(review.counts())).append(offered(review)).toString();
    }

    private static String heading(Review.Mark mark) {
        return switch (mark) {
            case DOUBTFUL -> "Hard to believe, but offered:";
            case SAME_NAME -> "Of the same name:";
            case SAME_ID -> "Of the same id:";
            case ALREADY_THERE -> "There already, not taken again:";
        };
    }

    private static void noted(StringBuilder text, String heading, List<Review.Noted> noted) {
        if (noted.isEmpty()) {
            return;
        }
        text.append(heading).append('\n');
        noted.stream().limit(MOST).forEach(each -> text.append("  ").append(each.written()).append('\n'));
        if (noted.size() > MOST) {
            text.append("  ... and ").append(noted.size() - MOST).append(noted.size() < 500 ? " more\n" : " or more\n");
        }
    }

    private static void lines(StringBuilder text, RecipeDraft draft) {
        text.append(draft.heading().name()).append(", for ").append(draft.serving().serves()).append('\n');
        for (RecipeDraft.Line line : draft.lines()) {
            String mark = switch (line.reading()) {
                case UNDERSTOOD -> "  ok   ";
                case GUESSED -> "  ?    ";
                case NOT_UNDERSTOOD -> "  --   ";
            };
            String food = line.food().map(known -> " = " + known.name()).orElse("");
            text.append(mark).append(line.written()).append(food).append(line.why().isEmpty() ? "" : " (" + line.why() + ")").append('\n');
        }
    }

    private static String counted(Review.Counts counts) {
        StringBuilder text = new StringBuilder().append(counts.read()).append(" read: ").append(counts.offered()).append(" offered");
        append(text, counts.doubtful(), " of them doubtful");
        append(text, counts.sameName(), " with the name of another");
        append(text, counts.alreadyThere(), " there already");
        append(text, counts.leftOut(), " left out");
        return text.append(".\n").toString();
    }

    private static void append(StringBuilder text, int count, String words) {
        if (count > 0) {
            text.append(", ").append(count).append(words);
        }
    }

    private static String offered(Review review) {
        if (review.isEmpty()) {
            return "Nothing is left to take.\n";
        }
        return "It would be kept in " + kind(review.goods()).file(review.goods().name()) + ".\n";
    }

    private static Own kind(Review.Goods goods) {
        return goods instanceof Review.Goods.Pack ? Own.PACK : goods instanceof Review.Goods.Prices ? Own.PRICES
                : goods instanceof Review.Goods.Recipe ? Own.DISH : Own.FOODS;
    }
}
