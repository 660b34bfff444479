package hobside.talk.paper;

import java.util.List;

/** What is printed, whatever the format: a title and the blocks below it in their order. */
public record Sheet(Front front, List<Block> blocks) {

    /**
     * What is known of the whole sheet.
     *
     * @param language the two-letter code of its language
     */
    public record Front(String title, String language, Look look) {

        public Front {
            title = Clean.text(title);
        }
    }

    /** How large it is written: to be read at arm's length, or so that all of it fits on one page. */
    public enum Look {
        LARGE,
        ONE_PAGE
    }

    public Sheet {
        blocks = List.copyOf(blocks);
    }

    public String title() {
        return front.title();
    }
}
