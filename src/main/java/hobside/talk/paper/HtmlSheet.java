package hobside.talk.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet as one page of HTML that needs nothing else: no pictures, letters or programs from outside. It is written so that an XML
 * reader can read it too, prints in black and white, and is read aloud part by part.
 */
public final class HtmlSheet {

    private final List<String> lines = new ArrayList<>();
    private boolean open;
    private boolean pageNext;

    private HtmlSheet() {}

    public static String of(Sheet sheet) {
        HtmlSheet html = new HtmlSheet();
        html.head(sheet);
        sheet.blocks().forEach(html::write);
        html.close();
        html.lines.addAll(List.of("</main>", "</body>", "</html>"));
        return String.join("\n", html.lines) + "\n";
    }

    private void head(Sheet sheet) {
        String look = sheet.front().look() == Sheet.Look.LARGE ? "large" : "one-page";
        lines.addAll(List.of("<!DOCTYPE html>", "<html lang=\"" + escaped(sheet.front().language()) + "\">", "<head>", "<meta charset=\"utf-8\"/>",
                "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\"/>",
                "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>",
                "<title>" + escaped(sheet.title()) + "</title>", "<style>", HtmlStyle.of(sheet), "</style>", "</head>",
                "<body class=\"" + look + "\">", "<main>", "<h1>" + escaped(sheet.title()) + "</h1>"));
    }

    private void write(Block block) {
        if (block instanceof Block.Heading heading) {
            close();
            lines.add("<section" + (pageNext ? " class=\"page\"" : "") + ">");
            lines.add("<h2>" + escaped(heading.words()) + "</h2>");
            open = true;
            pageNext = false;
        } else if (block instanceof Block.PageBreak) {
            pageNext = true;
        } else {
            within(block);
        }
    }

    private void close() {
        if (open) {
            lines.add("</section>");
            open = false;
        }
    }

    private void within(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            lines.add("<p>" + escaped(paragraph.words()) + "</p>");
        } else if (block instanceof Block.CueLine cue) {
            String remark = cue.remark().isEmpty() ? "" : " <span class=\"remark\">(" + escaped(cue.remark()) + ")</span>";
            lines.add("<div class=\"cue " + escaped(cue.mark().kind()) + "\"><div class=\"word\">" + escaped(cue.mark().label()) + "</div><div class=\"said\">"
                    + escaped(cue.words()) + remark + "</div></div>");
        } else if (block instanceof Block.Checks checks) {
            list("checks" + (checks.twoColumns() ? " columns" : ""), checks.items());
        } else if (block instanceof Block.Lines list) {
            list("lines", list.items());
        } else if (block instanceof Block.Table table) {
            table(table, "figures");
        } else {
            framed(block);
        }
    }

    private void list(String kind, List<String> items) {
        lines.add("<ul class=\"" + kind + "\">");
        items.forEach(item -> lines.add("<li>" + escaped(item) + "</li>"));
        lines.add("</ul>");
    }

    private void table(Block.Table table, String kind) {
        lines.add("<table class=\"" + kind + "\">");
        lines.add("<thead>" + row(table, table.head(), "th scope=\"col\"", "th") + "</thead>");
        lines.add("<tbody>");
        table.rows().forEach(cells -> lines.add(row(table, cells, "td", "td")));
        lines.add("</tbody>");
        lines.add("</table>");
    }

    private static String row(Block.Table table, List<String> cells, String start, String end) {
        StringBuilder row = new StringBuilder("<tr>");
        for (int i = 0; i < cells.size(); i++) {
            row.append('<').append(start).append(table.isFigure(i) ? " class=\"n\">" : ">").append(escaped(cells.get(i))).append("</").append(end).append('>');
        }
        return row.append("</tr>").toString();
    }

    private void framed(Block block) {
        if (block instanceof Block.Board board) {
            table(new Block.Table(List.of(board.head().title(), board.head().now(), board.head().since()),
                    board.lines().stream().map(line -> List.of(line.label(), line.now(), line.moved())).toList(), 2), "board");
        } else if (block instanceof Block.Chart chart) {
            lines.addAll(SvgChart.lines(chart));
        } else if (block instanceof Block.Box box) {
            lines.add("<div class=\"box" + (box.large() ? " big" : "") + "\">" + (box.title().isEmpty() ? "" : "<p class=\"title\">" + escaped(box.title()) + "</p>"));
            box.lines().forEach(line -> lines.add("<p>" + escaped(line) + "</p>"));
            lines.add("</div>");
        }
    }

    /** For text and for attributes in double quotes. */
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("'", "&#39;");
    }
}
