package hobside.talk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.measure.Range;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SheetTest {

    private static final String NASTY = "<script>alert('x')</script> & \"y\" *bold* [a](http://b) `c` | d \\ # e \u0007\u001b[31m\u202e\n</style>";

    private static Sheet sheet(Block... blocks) {
        return sheet("A pot", blocks);
    }

    private static Sheet sheet(String title, Block... blocks) {
        return new Sheet(new Sheet.Front(title, "en", Sheet.Look.LARGE), List.of(blocks));
    }

    private static Sheet nasty() {
        Block.Chart.Point point = new Block.Chart.Point(NASTY, Range.of(1, 2, 3), new Block.Chart.Figure(NASTY, NASTY), List.of(NASTY));
        return sheet(NASTY, new Block.Paragraph(NASTY), new Block.Heading(NASTY), new Block.Paragraph(NASTY),
                new Block.CueLine(new Block.CueLine.Mark("say", NASTY), NASTY, NASTY), new Block.Checks(List.of(NASTY), true),
                new Block.Checks(List.of(NASTY), false), new Block.Lines(List.of(NASTY)), new Block.Table(List.of(NASTY, NASTY), List.of(List.of(NASTY, NASTY)), 1),
                new Block.Board(new Block.Board.Head(NASTY, NASTY, NASTY), List.of(new Block.Board.Line(NASTY, NASTY, NASTY))),
                new Block.Chart(new Block.Chart.Head(NASTY, NASTY, NASTY, List.of(NASTY)), List.of(point)), new Block.Box(NASTY, List.of(NASTY), true));
    }

    @Test
    void no_control_character_of_a_user_gets_onto_any_sheet() {
        for (String text : List.of(TextSheet.of(nasty()), MarkdownSheet.of(nasty()), HtmlSheet.of(nasty()))) {
            assertTrue(text.codePoints().allMatch(sign -> sign == '\n' || !Character.isISOControl(sign) && sign != 0x202e), text);
        }
    }

    @Test
    void words_of_a_user_cannot_become_a_part_of_the_page() throws Exception {
        Document page = Papers.page(HtmlSheet.of(nasty()));
        assertEquals(0, page.getElementsByTagName("script").getLength());
        assertEquals(0, page.getElementsByTagName("a").getLength());
        assertEquals(1, page.getElementsByTagName("style").getLength());
        assertTrue(page.getElementsByTagName("h1").item(0).getTextContent().startsWith("<script>alert('x')</script> & \"y\""));
    }

    @Test
    void a_title_cannot_end_the_style_that_it_stands_in() throws Exception {
        String style = Papers.page(HtmlSheet.of(nasty())).getElementsByTagName("style").item(0).getTextContent();
        assertFalse(style.contains("alert("), style);
        assertFalse(style.contains("</"), style);
        assertEquals(style.chars().filter(sign -> sign == '{').count(), style.chars().filter(sign -> sign == '}').count());
    }

    @Test
    void marks_of_markdown_in_words_are_escaped() {
        String text = MarkdownSheet.of(sheet(new Block.Paragraph("*bold* [a](b) <i> `c` ~d~ &amp;"), new Block.Table(List.of("a"), List.of(List.of("x | y")), 0)));
        assertTrue(text.contains("\\*bold\\* \\[a\\](b) \\<i\\> \\`c\\` \\~d\\~ \\&amp;"), text);
        assertTrue(text.contains("| x \\| y |"), text);
    }

    @Test
    void a_paragraph_that_begins_like_a_list_stays_a_paragraph() {
        String text = MarkdownSheet.of(sheet(new Block.Paragraph("- one"), new Block.Paragraph("2. two"), new Block.Paragraph("+ three"), new Block.Paragraph("1 kg flour")));
        for (String line : List.of("\\- one", "2\\. two", "\\+ three", "1 kg flour")) {
            assertTrue(text.contains("\n" + line + "\n"), text);
        }
    }

    @Test
    void a_word_longer_than_a_line_is_cut() {
        String text = TextSheet.of(sheet("t".repeat(100), new Block.Paragraph("x".repeat(200)), new Block.Checks(List.of("y".repeat(200)), true),
                new Block.Table(List.of("z".repeat(90), "w"), List.of(List.of("a", "v".repeat(90))), 1)), 50);
        for (String line : text.split("\n")) {
            assertTrue(line.length() <= 50, line);
        }
    }

    @Test
    void a_row_that_does_not_fit_its_table_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> new Block.Table(List.of("a", "b"), List.of(List.of("c")), 0));
    }

    @Test
    void bars_are_as_high_as_their_figures() throws Exception {
        List<Block.Chart.Point> points = List.of(point(40, 36, 44), point(20, 18, 22), point(10, 10, 10), point(0, 0, 0));
        Document page = Papers.page(HtmlSheet.of(sheet(new Block.Chart(new Block.Chart.Head("t", "d", "r", List.of()), points))));
        NodeList bars = page.getElementsByTagName("rect");
        double full = height(bars, 0);
        assertEquals(SvgChart.TALL * 40 / 44, full, 0.01);
        assertEquals(full / 2, height(bars, 1), 0.01);
        assertEquals(full / 4, height(bars, 2), 0.01);
        assertEquals(0, height(bars, 3), 0.01);
    }

    @Test
    void a_figure_without_a_range_has_no_whisker() throws Exception {
        Block.Chart chart = new Block.Chart(new Block.Chart.Head("t", "d", "r", List.of()), List.of(point(40, 36, 44), point(10, 10, 10)));
        assertEquals(1, Papers.page(HtmlSheet.of(sheet(chart))).getElementsByTagName("path").getLength());
    }

    @Test
    void a_chart_is_told_in_words_to_those_who_do_not_see_it() throws Exception {
        Block.Chart chart = new Block.Chart(new Block.Chart.Head("Fat", "At the start: 40 g.", "r", List.of()), List.of(point(40, 36, 44)));
        Document page = Papers.page(HtmlSheet.of(sheet(chart)));
        Element drawing = (Element) page.getElementsByTagName("svg").item(0);
        assertEquals("Fat", drawing.getElementsByTagName("title").item(0).getTextContent());
        assertEquals("At the start: 40 g.", drawing.getElementsByTagName("desc").item(0).getTextContent());
    }

    private static Block.Chart.Point point(double typical, double low, double high) {
        return new Block.Chart.Point("p", Range.of(low, typical, high), new Block.Chart.Figure("f", ""), List.of());
    }

    private static double height(NodeList bars, int index) {
        return Double.parseDouble(((Element) bars.item(index)).getAttribute("height"));
    }
}
