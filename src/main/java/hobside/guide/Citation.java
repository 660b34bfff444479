package hobside.guide;

/**
 * Where a published figure comes from.
 *
 * @param source the instrument or page, as one would look it up
 * @param date the date of the text that was read or remembered, a year at least
 * @param note what else a careful reader should know; empty when nothing
 */
public record Citation(String source, String date, Mark mark, String note) {

    public static Citation of(String source, String date, Mark mark) {
        return new Citation(source, date, mark, "");
    }

    /** "Regulation (EU) No 1169/2011, Annex XIV (2011; confirmed)". */
    public String written() {
        return source + " (" + (date.isEmpty() ? "" : date + "; ") + mark.word() + ")";
    }

    public boolean isConfirmed() {
        return mark == Mark.CONFIRMED;
    }

    /** What has to be added when the figure is spoken: nothing for a confirmed one. */
    String warning() {
        return mark == Mark.FROM_MEMORY ? " This figure is from memory: check it before you rely on it." : "";
    }
}
