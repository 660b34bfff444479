package hobside.talk.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.measure.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Sheets as Markdown and as a page of HTML; drawn by hand. */
class PageFormTest {

    private static Sheet sheet(Block... blocks) {
        return new Sheet(new Sheet.Front("A pot", "en", Sheet.Look.LARGE), List.of(blocks));
    }

    private static Block.Chart chart(List<String> under, Block.Chart.Point... points) {
        return new Block.Chart(new Block.Chart.Head("Fat", "At the start: 40 g.", "range", under), List.of(points));
    }

    private static Block.Chart.Point point(String label, Range grams, String range, String... under) {
        return new Block.Chart.Point(label, grams, new Block.Chart.Figure(Math.round(grams.typical()) + " g", range), List.of(under));
    }

    @Test
    void markdown_has_each_block_in_its_form() {
        assertEquals("""
                # A pot

                ## At the hob

                One.

                **Say:** Stir. *(may be left out)*

                **Do:** Pour.

                - [ ] peas
                - [ ] salt

                - first
                - second

                | Food | g |
                |---|---:|
                | peas | 120 |

                | The board | Now | Since |
                |---|---:|---:|
                | Fat | 7 g | 4 g less |

                **Fat**

                At the start: 40 g.

                |  | range | cost |
                |---|---:|---:|
                | Start | 36 to 44 | 4 cr |
                | End | – | 3 cr |

                > **Allergens** milk \s
                > eggs

                > milk
                """, MarkdownSheet.of(sheet(new Block.Heading("At the hob"), new Block.Paragraph("One."), cue("Say", "Stir.", "may be left out"), cue("Do", "Pour.", ""),
                new Block.Checks(List.of("peas", "salt"), true), new Block.Lines(List.of("first", "second")), new Block.Table(List.of("Food", "g"), List.of(List.of("peas", "120")), 1),
                board(), chart(List.of("cost"), point("Start", Range.of(36, 40, 44), "36 to 44", "4 cr"), point("End", Range.exactly(10), "", "3 cr")),
                new Block.Box("Allergens", List.of("milk", "eggs"), true), new Block.Box("", List.of("milk"), false))));
    }

    private static Block cue(String label, String words, String remark) {
        return new Block.CueLine(new Block.CueLine.Mark("say", label), words, remark);
    }

    private static Block board() {
        return new Block.Board(new Block.Board.Head("The board", "Now", "Since"), List.of(new Block.Board.Line("Fat", "7 g", "4 g less")));
    }

    private static String main(Block... blocks) {
        String page = HtmlSheet.of(sheet(blocks));
        return page.substring(page.indexOf("</h1>") + "</h1>\n".length(), page.indexOf("</main>"));
    }

    @Test
    void a_part_of_a_page_is_a_section_and_may_begin_a_new_page() {
        assertEquals("""
                <p>One.</p>
                <section>
                <h2>Two</h2>
                <p>Three.</p>
                </section>
                <section class="page">
                <h2>Four</h2>
                </section>
                <section>
                <h2>Five</h2>
                </section>
                """, main(new Block.Paragraph("One."), new Block.Heading("Two"), new Block.Paragraph("Three."), new Block.PageBreak(), new Block.Heading("Four"), new Block.Heading("Five")));
    }

    @Test
    void html_has_each_block_in_its_form() {
        assertEquals("""
                <div class="cue say"><div class="word">Say</div><div class="said">Stir. <span class="remark">(may be left out)</span></div></div>
                <div class="cue say"><div class="word">Do</div><div class="said">Pour.</div></div>
                <ul class="checks columns">
                <li>peas</li>
                </ul>
                <ul class="checks">
                <li>peas</li>
                </ul>
                <ul class="lines">
                <li>first</li>
                </ul>
                <table class="board">
                <thead><tr><th scope="col">The board</th><th scope="col" class="n">Now</th><th scope="col" class="n">Since</th></tr></thead>
                <tbody>
                <tr><td>Fat</td><td class="n">7 g</td><td class="n">4 g less</td></tr>
                </tbody>
                </table>
                <div class="box big"><p class="title">Allergens</p>
                <p>milk</p>
                </div>
                <div class="box">
                <p>milk</p>
                </div>
                """, main(cue("Say", "Stir.", "may be left out"), cue("Do", "Pour.", ""), new Block.Checks(List.of("peas"), true), new Block.Checks(List.of("peas"), false),
                new Block.Lines(List.of("first")), board(), new Block.Box("Allergens", List.of("milk"), true), new Block.Box("", List.of("milk"), false)));
    }

    /** Up to 47 lines of text are written in 11.5 point; four times as many lines, in half of that and never below 7.5. */
    @Test
    void the_more_there_is_on_a_single_page_the_smaller_it_is_written() {
        assertTrue(style(10).contains("font-size: 11.5pt"), style(10));
        assertTrue(style(45).contains("font-size: 11.5pt"), style(45));
        // 47 of 71 lines (69 and the title's 2): 11.5 × √(47/71) = 9.36.
        assertTrue(style(69).contains("font-size: 9.4pt"), style(69));
        assertTrue(style(300).contains("font-size: 7.5pt"), style(300));
    }

    private static String style(int lines) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            blocks.add(new Block.Paragraph("One."));
        }
        return HtmlStyle.of(new Sheet(new Sheet.Front("A pot", "en", Sheet.Look.ONE_PAGE), blocks));
    }

    /** Large sheets carry their title at the head of each printed page; letters beyond plain ones are written by their numbers. */
    @Test
    void a_large_sheet_has_its_title_on_every_printed_page() {
        String style = HtmlStyle.of(new Sheet(new Sheet.Front("Pot 2: Ñandú", "en", Sheet.Look.LARGE), List.of()));
        assertTrue(style.contains("@top-left { content: \"Pot 2\\3a  \\d1 and\\fa \""), style.substring(style.indexOf("@page")));
        assertTrue(style.contains("font-size: 14pt"));
    }

    @Test
    void a_page_says_in_which_look_it_is_written_and_holds_its_tables() {
        String page = HtmlSheet.of(sheet(new Block.Table(List.of("Food", "g"), List.of(List.of("peas", "120")), 1)));
        assertTrue(page.contains("<body class=\"large\">") && page.contains("<table class=\"figures\">"), page.substring(page.indexOf("<body")));
        assertTrue(HtmlSheet.of(new Sheet(new Sheet.Front("A pot", "en", Sheet.Look.ONE_PAGE), List.of())).contains("<body class=\"one-page\">"));
    }

    private static Document drawn(Block.Chart chart) throws Exception {
        return Papers.page(HtmlSheet.of(sheet(chart)));
    }

    private static List<Element> all(Document page, String name) {
        NodeList nodes = page.getElementsByTagName(name);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            all.add((Element) nodes.item(i));
        }
        return all;
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    private static Block.Chart three() {
        return chart(List.of("energy", "cost"), point("Start", Range.of(30, 40, 50), "30 to 50", "900 kcal", "4 cr"), point("after change 1", Range.exactly(25), "", "700 kcal", "3 cr"),
                point("End", Range.of(8, 10, 12), "8 to 12", "500 kcal", "2 cr"));
    }

    @Test
    void bars_stand_on_the_line_side_by_side_within_the_drawing() throws Exception {
        Document page = drawn(three());
        Element line = all(page, "line").get(0);
        double right = number(line, "x1");
        for (Element bar : all(page, "rect")) {
            assertEquals(number(line, "y1"), number(bar, "y") + number(bar, "height"), 0.011);
            assertTrue(number(bar, "x") > right, "bars stand apart");
            assertTrue(number(bar, "width") > 10 && number(bar, "width") <= 58);
            right = number(bar, "x") + number(bar, "width");
        }
        assertTrue(right < number(line, "x2") && number(line, "x2") == 700 && number(line, "y1") == number(line, "y2"));
    }

    @Test
    void bars_keep_one_distance_from_each_other_and_from_the_edges() throws Exception {
        List<Element> bars = all(drawn(three()), "rect");
        double step = number(bars.get(1), "x") - number(bars.get(0), "x");
        assertEquals(step, number(bars.get(2), "x") - number(bars.get(1), "x"), 0.011);
        double middle = number(bars.get(2), "x") + number(bars.get(2), "width") / 2;
        assertEquals(700 - step / 2, middle, 0.011);
    }

    @Test
    void a_whisker_reaches_from_the_low_to_the_high_end_over_the_middle_of_its_bar() throws Exception {
        Document page = drawn(three());
        // 50 g is the highest end and as tall as the chart; 30 g are three fifths of it.
        double foot = number(all(page, "line").get(0), "y1");
        Element bar = all(page, "rect").get(0);
        String middle = String.format(Locale.ROOT, "%.2f", number(bar, "x") + number(bar, "width") / 2);
        String low = String.format(Locale.ROOT, "%.2f", foot - SvgChart.TALL * 0.6);
        String high = String.format(Locale.ROOT, "%.2f", foot - SvgChart.TALL);
        String path = all(page, "path").get(0).getAttribute("d");
        assertTrue(path.startsWith("M" + middle + " " + low + "V" + high + "M"), path);
        String left = String.format(Locale.ROOT, "%.2f", number(bar, "x") + number(bar, "width") / 2 - 7);
        assertTrue(path.endsWith("M" + left + " " + low + "h14M" + left + " " + high + "h14"), path);
    }

    @Test
    void what_is_written_stands_in_rows_below_the_bars_and_inside_the_drawing() throws Exception {
        Document page = drawn(three());
        String[] box = all(page, "svg").get(0).getAttribute("viewBox").split(" ");
        double foot = number(all(page, "line").get(0), "y1");
        List<Double> rows = new ArrayList<>();
        for (Element text : all(page, "text")) {
            double y = number(text, "y");
            assertTrue(y > 14 && y < Double.parseDouble(box[3]), text.getTextContent());
            assertTrue(text.getAttribute("font-weight").isEmpty() ? y > foot + 14 : y < foot, text.getTextContent());
            if (text.getAttribute("text-anchor").equals("start")) {
                assertEquals(0, number(text, "x"));
                rows.add(y);
            }
        }
        assertEquals(3, rows.size());
        assertEquals(rows.get(1) - rows.get(0), rows.get(2) - rows.get(1), 0.011);
        assertTrue(rows.get(1) - rows.get(0) >= 14, "no row stands in another");
    }

    @Test
    void the_figures_of_a_bar_stand_in_the_rows_of_their_names() throws Exception {
        Document page = drawn(three());
        assertEquals(y(page, "range"), y(page, "30 to 50"));
        assertEquals(y(page, "range"), y(page, "–"));
        assertEquals(y(page, "energy"), y(page, "700 kcal"));
        assertEquals(y(page, "cost"), y(page, "2 cr"));
        assertTrue(y(page, "Start") < y(page, "range") && y(page, "40 g") < y(page, "25 g"));
        // Eight units of air between the highest end of a bar and its figure.
        assertEquals(number(all(page, "rect").get(1), "y") - 8, y(page, "25 g"), 0.011);
    }

    private static double y(Document page, String words) {
        return all(page, "text").stream().filter(text -> text.getTextContent().equals(words)).mapToDouble(text -> number(text, "y")).findFirst().orElseThrow();
    }

    @Test
    void many_bars_are_written_smaller_and_their_labels_go_on_in_a_second_line() throws Exception {
        Block.Chart.Point[] points = new Block.Chart.Point[12];
        Arrays.fill(points, point("after change ten and eleven", Range.exactly(10), "", "1 cr"));
        Document page = drawn(chart(List.of("cost"), points));
        assertTrue(number(all(page, "svg").get(0), "font-size") < 14);
        List<Element> label = all(page, "text").stream().filter(text -> text.getTextContent().startsWith("after") || text.getTextContent().startsWith("change")).toList();
        assertEquals(24, label.size());
        assertTrue(number(label.get(1), "y") > number(label.get(0), "y"));
        assertEquals(14, number(all(drawn(three()), "svg").get(0), "font-size"), 0.01);
    }

    @Test
    void a_chart_of_nothing_has_bars_without_height() throws Exception {
        assertEquals(0, number(all(drawn(chart(List.of(), point("Start", Range.exactly(0), ""))), "rect").get(0), "height"));
    }
}
