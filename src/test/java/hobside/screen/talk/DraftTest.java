package hobside.screen.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.screen.Key;
import hobside.screen.TextWidth;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DraftTest {

    private static Draft play(Draft draft, String keys) {
        Draft now = draft;
        for (Key key : Key.parseAll(keys)) {
            now = now.after(key, 20);
        }
        return now;
    }

    @Test
    void lines_are_broken_at_spaces_and_nothing_is_lost() {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            StringBuilder text = new StringBuilder();
            for (int word = 0; word < random.nextInt(30); word++) {
                text.append("abcdefghijklmnopqrstuvwxyzäé漢".substring(0, 1 + random.nextInt(28))).append(' ');
            }
            Page page = Page.of(text.toString(), 20);
            StringBuilder back = new StringBuilder();
            for (int row = 0; row < page.size(); row++) {
                back.append(page.line(row));
                assertTrue(TextWidth.of(page.line(row).stripTrailing()) <= 20, page.line(row));
            }
            assertEquals(text.toString(), back.toString());
        }
    }

    @Test
    void the_caret_goes_up_and_down_by_what_is_seen() {
        Draft draft = Draft.of("one two three four five six seven");
        assertEquals(draft.text().length(), draft.caret());
        Draft up = play(draft, "up");
        assertEquals(draft.caret(), play(up, "down").caret());
        assertEquals(0, play(draft, "up up up").caret());
        assertEquals(0, play(draft, "page-up").caret());
    }

    @Test
    void what_was_typed_can_be_taken_back_letter_by_letter_and_done_again() {
        Draft draft = play(Draft.of(""), "a b space c");
        assertEquals("ab c", draft.text());
        assertEquals("ab", play(draft, "ctrl-z ctrl-z").text());
        assertEquals("ab c", play(draft, "ctrl-z ctrl-z ctrl-y ctrl-y").text());
        assertEquals("", play(draft, "ctrl-u").text());
        assertEquals("ab ", play(draft, "ctrl-w").text());
        assertEquals("ab c", play(draft, "ctrl-u ctrl-z").text());
    }

    @Test
    void no_key_breaks_it_whatever_the_text() {
        Random random = new Random(11);
        String[] keys = {"left", "right", "up", "down", "home", "end", "backspace", "delete", "x", "space", "ctrl-z", "ctrl-y", "ctrl-w", "漢", "page-up", "page-down"};
        Draft draft = Draft.of("The ribs 漢字 and {saved} words");
        for (int i = 0; i < 5_000; i++) {
            draft = draft.after(Key.parse(keys[random.nextInt(keys.length)]), 12);
            assertTrue(draft.caret() >= 0 && draft.caret() <= draft.text().length());
        }
    }
}
