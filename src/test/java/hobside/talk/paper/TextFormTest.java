package hobside.talk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.measure.Range;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets as plain text, letter for letter as they are meant to look; drawn by hand. */
class TextFormTest {

    private static String large(int width, Block... blocks) {
        return TextSheet.of(new Sheet(new Sheet.Front("A pot", "en", Sheet.Look.LARGE), List.of(blocks)), width);
    }

    private static String onePage(int width, Block... blocks) {
        return TextSheet.of(new Sheet(new Sheet.Front("A pot", "en", Sheet.Look.ONE_PAGE), List.of(blocks)), width);
    }

    private static Block paragraph(String words) {
        return new Block.Paragraph(words);
    }

    @Test
    void a_large_sheet_gives_its_parts_room() {
        assertEquals("""
                A POT
                =====

                AT THE HOB
                --------------------------------------------------
                One.
                Two.

                  - a list
                  - of two


                THEN
                --------------------------------------------------
                Three.
                """, large(50, new Block.Heading("At the hob"), paragraph("One."), paragraph("Two."), new Block.Lines(List.of("a list", "of two")),
                new Block.PageBreak(), new Block.Heading("Then"), paragraph("Three.")));
    }

    @Test
    void a_single_page_saves_room() {
        assertEquals("""
                A POT
                =====
                AT THE HOB
                One.

                THEN
                  - a list

                Two.
                """, onePage(50, new Block.Heading("At the hob"), paragraph("One."), new Block.Heading("Then"), new Block.Lines(List.of("a list")), paragraph("Two.")));
    }

    @Test
    void a_screen_narrower_than_fifty_columns_gets_fifty() {
        assertEquals(large(50, paragraph("so ".repeat(40))), large(20, paragraph("so ".repeat(40))));
    }

    @Test
    void the_words_of_a_cue_hang_beside_its_label() {
        assertEquals("""
                A POT
                =====

                AT THE HOB
                --------------------------------------------------

                SAY        These ribs have been cooked here for a
                           hundred years. [may be left out]

                TAKE CARE  Hot.

                MUCH LONGER ONES Hot.
                """, large(50, new Block.Heading("At the hob"), cue("Say", "These ribs have been cooked here for a hundred years.", "may be left out"),
                cue("Take care", "Hot.", ""), cue("Much longer ones", "Hot.", "")));
    }

    private static Block cue(String label, String words, String remark) {
        return new Block.CueLine(new Block.CueLine.Mark("say", label), words, remark);
    }

    @Test
    void ticks_stand_in_two_columns_where_there_is_room() {
        Block.Checks checks = new Block.Checks(List.of("peas", "a much longer thing to buy for the pot", "salt"), true);
        assertEquals("""
                A POT
                =====
                [ ] peas                                [ ] salt
                [ ] a much longer thing to buy for the
                    pot
                """, onePage(80, checks));
        assertEquals("""
                A POT
                =====
                  [ ] peas
                  [ ] a much longer thing to buy for the pot
                  [ ] salt
                """, onePage(79, checks));
    }

    @Test
    void a_second_column_may_be_the_longer_one() {
        assertEquals("""
                A POT
                =====
                [ ] peas                                [ ] a much longer thing to buy for the
                                                            pot
                """, onePage(80, new Block.Checks(List.of("peas", "a much longer thing to buy for the pot"), true)));
    }

    @Test
    void tables_boards_and_charts_stand_on_a_sheet_as_wide_as_it_is() {
        Block.Table table = new Block.Table(List.of("Food", "g"), List.of(List.of("peas", "120")), 1);
        Block.Board board = new Block.Board(new Block.Board.Head("The board", "Now", "Since"), List.of());
        Block.Chart chart = new Block.Chart(new Block.Chart.Head("Fat", "t", "range", List.of()), List.of(new Block.Chart.Point("End", Range.exactly(10), new Block.Chart.Figure("10 g", ""), List.of())));
        List<String> lines = List.of(onePage(50, table, board, chart).split("\n"));
        assertTrue(lines.containsAll(TextTable.lines(table, 50)) && lines.containsAll(TextTable.board(board, 50)) && lines.containsAll(TextChart.lines(chart, 50)), lines.toString());
    }

    @Test
    void a_box_has_a_frame_and_may_have_a_title() {
        String plain = "+" + "-".repeat(48) + "+";
        String milk = "| milk" + " ".repeat(43) + "|";
        assertEquals(String.join("\n", "A POT", "=====", "+-- Allergens " + "-".repeat(35) + "+", milk, plain, "", plain, milk, plain) + "\n",
                onePage(50, new Block.Box("Allergens", List.of("milk"), false), new Block.Box("", List.of("milk"), false)));
    }

    @Test
    void figures_stand_at_the_right_of_their_column() {
        Block.Table table = new Block.Table(List.of("Food", "g"), List.of(List.of("peas", "120"), List.of("red beans", "7")), 1);
        assertEquals(List.of("Food         g", "--------------", "peas       120", "red beans    7"), TextTable.lines(table, 50));
    }

    @Test
    void the_widest_column_gives_way_and_its_words_are_folded() {
        Block.Table table = new Block.Table(List.of("aaaa bbbb", "c", "d"), List.of(List.of("x", "yy", "z")), 0);
        assertEquals(List.of("aaaa     c   d", "bbbb", "--------------", "x        yy  z"), TextTable.lines(table, 14));
    }

    @Test
    void a_board_is_framed_as_wide_as_the_sheet() {
        Block.Board board = new Block.Board(new Block.Board.Head("The board", "Now", "Since"), List.of(new Block.Board.Line("Fat", "7 g", "4 g less")));
        assertEquals(List.of("  +-- The board " + "-".repeat(31) + "+", "  |  Fat             7 g                     4 |", "  +" + "-".repeat(44) + "+"), TextTable.board(board, 50));
        assertEquals("  |  Fat                       7 g                     4 g less" + " ".repeat(14) + "|", TextTable.board(board, 80).get(1));
        assertEquals("  |  Fat             7 g                     4 g less" + " ".repeat(19) + "|", TextTable.board(board, 75).get(1));
        assertEquals("  |  Fat                       7 g                     4 g less" + " ".repeat(10) + "|", TextTable.board(board, 76).get(1));
    }

    @Test
    void a_title_that_is_too_long_for_its_board_is_cut() {
        Block.Board board = new Block.Board(new Block.Board.Head("x".repeat(60), "Now", "Since"), List.of());
        assertEquals("  +-- " + "x".repeat(41) + "+", TextTable.board(board, 50).get(0));
    }

    /** 50 columns less the labels (5), the figures (4) and two gaps of 2 leave 37 for the bars; a quarter of 37 is 9. */
    @Test
    void bars_are_as_long_as_their_figures() {
        Block.Chart chart = new Block.Chart(new Block.Chart.Head("Fat", "t", "range", List.of("cost")), List.of(point("Start", 40, "36 to 44", "4 cr"), point("End", 10, "", "3 cr")));
        assertEquals(List.of("Fat", "Start  " + "#".repeat(37) + "  40 g", "End    " + "#".repeat(9) + " ".repeat(28) + "  10 g", "",
                "          range  cost", "---------------------", "Start  36 to 44  4 cr", "End           –  3 cr"), TextChart.lines(chart, 50));
    }

    @Test
    void a_long_label_goes_on_below_its_bar_and_nothing_at_all_has_no_bar() {
        Block.Chart.Point nothing = new Block.Chart.Point("after the second change", Range.exactly(0), new Block.Chart.Figure("0 g", ""), List.of());
        List<String> lines = TextChart.lines(new Block.Chart(new Block.Chart.Head("Fat", "t", "range", List.of()), List.of(nothing)), 50);
        assertEquals(List.of("after the second" + " ".repeat(31) + "0 g", "change"), lines.subList(1, 3));
    }

    private static Block.Chart.Point point(String label, double grams, String range, String cost) {
        return new Block.Chart.Point(label, Range.exactly(grams), new Block.Chart.Figure(Math.round(grams) + " g", range), List.of(cost));
    }

    @Test
    void text_is_folded_at_spaces_and_a_long_word_is_cut() {
        assertEquals(List.of("ab cd", "ef"), Folded.lines("ab cd ef", 5));
        assertEquals(List.of("ab cd ef"), Folded.lines("  ab  cd ef ", 8));
        assertEquals(List.of("a", "bcdef", "gh i"), Folded.lines("a bcdefgh i", 5));
        assertEquals(List.of("abcde"), Folded.lines("abcde", 5));
        assertEquals(List.of(""), Folded.lines("", 5));
    }

    @Test
    void text_is_padded_to_its_width_and_never_cut() {
        assertEquals("ab  ", Folded.padded("ab", 4));
        assertEquals("  ab", Folded.right("ab", 4));
        assertEquals("abcde", Folded.padded("abcde", 4));
        assertEquals("abcde", Folded.right("abcde", 4));
    }

    @Test
    void breaks_and_tabs_are_blanks_and_signs_that_nobody_sees_are_gone() {
        assertEquals("a b c d e f", Clean.text("a\nb\tc\rd\u2028e\u2029f"));
        assertEquals("ab", Clean.text("a\u0007\u202e\ud800\ue000\u0378b"));
        assertEquals("a\u200db\u200cc", Clean.text("a\u200db\u200cc"));
        assertEquals("\ud83c\udf72 ñ", Clean.text("\ud83c\udf72 ñ"));
    }
}
