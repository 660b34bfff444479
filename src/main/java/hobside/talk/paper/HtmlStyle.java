package hobside.talk.paper;

import java.util.Locale;

/** How a sheet looks in print and on a screen: black on white, told apart by weight, lines and frames, never by colour. */
final class HtmlStyle {

    private static final String COMMON = """
            * { box-sizing: border-box; }
            body { margin: 0; color: #000; background: #fff; font-family: "Helvetica Neue", Helvetica, Arial, "Liberation Sans", "DejaVu Sans", sans-serif; }
            main { max-width: 48em; margin: 0 auto; padding: 1em; }
            h1, h2 { line-height: 1.15; break-after: avoid; }
            p, li, .said { overflow-wrap: anywhere; orphans: 2; widows: 2; }
            td, th { overflow-wrap: break-word; }
            section { break-inside: avoid; }
            section:first-of-type { break-inside: auto; }
            section.page { break-before: page; }
            ul { padding-left: 1.3em; }
            li, tr, .box, .cue, figure { break-inside: avoid; }
            ul.checks { list-style: none; padding-left: 0; }
            ul.checks li { padding-left: 1.7em; position: relative; }
            ul.checks li::before { content: ""; position: absolute; left: 0.1em; top: 0.2em; width: 0.85em; height: 0.85em; border: 0.1em solid #000; }
            ul.columns { columns: 2; column-gap: 2em; }
            table { border-collapse: collapse; width: 100%; break-inside: avoid; }
            th { text-align: left; font-weight: bold; vertical-align: bottom; }
            td { vertical-align: top; }
            .n { text-align: right; font-variant-numeric: tabular-nums; }
            td.n { white-space: nowrap; }
            .board { border: 0.2em solid #000; break-before: avoid; }
            .board td:nth-child(2) { font-weight: bold; }
            figure { margin: 1em 0; }
            svg { width: 100%; height: auto; display: block; }
            @media print { main { max-width: none; padding: 0; } }
            """;

    private static final String LARGE = """
            body { font-size: 14pt; line-height: 1.32; }
            h1 { font-size: 26pt; margin: 0 0 0.3em; }
            h2 { font-size: 18pt; margin: 0 0 0.5em; padding-top: 0.25em; border-top: 0.16em solid #000; }
            section { margin-top: 1.6em; }
            .cue { display: grid; grid-template-columns: 6.2em 1fr; column-gap: 0.7em; margin: 0.55em 0; padding: 0.1em 0 0.1em 0.5em; border-left: 0.3em solid #fff; }
            .word { font-weight: bold; }
            .say { border-left: 0.12em solid #000; }
            .do { border-left: 0.42em solid #000; }
            .do .said { font-weight: bold; }
            .show { border-left: 0.3em dashed #000; }
            .ask { border-left: 0.42em double #000; }
            .ask .said { font-style: italic; }
            .take-care { border: 0.18em solid #000; padding: 0.3em 0.5em; }
            .take-care .word { text-transform: uppercase; font-size: 0.92em; }
            .remark { font-size: 0.75em; font-style: italic; white-space: nowrap; font-weight: normal; }
            table { margin: 0.8em 0; }
            th, td { padding: 0.15em 0.5em; border-bottom: 1px solid #000; }
            .box { border: 0.15em solid #000; padding: 0.3em 0.7em; margin: 0.8em 0; }
            .box p { margin: 0.2em 0; }
            .box .title { font-weight: bold; }
            .big { font-size: 22pt; border-width: 0.25em; }
            """;

    private static final String ONE_PAGE = """
            body { font-size: SIZEpt; line-height: 1.25; }
            h1 { font-size: 2em; margin: 0 0 0.15em; }
            h2 { font-size: 1.2em; margin: 0.55em 0 0.2em; border-bottom: 0.13em solid #000; }
            p, ul, .box p { margin: 0.2em 0; }
            li { margin: 0.12em 0; }
            table { margin: 0.4em 0; border: 0.15em solid #000; }
            th, td { padding: 0.12em 0.6em; border-bottom: 1px solid #000; }
            td.n:last-child { font-weight: bold; }
            .box { border: 0.13em solid #000; padding: 0.15em 0.7em; margin: 0.5em 0; }
            .box .title { font-weight: bold; }
            ul.lines { padding-left: 1.1em; }
            """;

    private HtmlStyle() {}

    static String of(Sheet sheet) {
        return (sheet.front().look() == Sheet.Look.LARGE ? COMMON + LARGE + pages(sheet.title())
                : COMMON + ONE_PAGE.replace("SIZE", size(sheet)) + "@page { margin: 11mm 14mm; }").stripTrailing();
    }

    /** The dish at the head of each page, and the page's number at its foot. */
    private static String pages(String title) {
        return "@page { margin: 18mm 16mm 16mm; @top-left { content: \"" + inStyle(title) + "\"; font: bold 10pt sans-serif; }"
                + " @bottom-right { content: counter(page) \" / \" counter(pages); font: 10pt sans-serif; } }";
    }

    /** Whatever is no plain letter or digit is written by its number, so that no title can end the text it stands in. */
    private static String inStyle(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(sign -> {
            boolean plain = sign == ' ' || sign < 128 && Character.isLetterOrDigit(sign);
            safe.append(plain ? Character.toString(sign) : "\\" + Integer.toHexString(sign) + " ");
        });
        return safe.toString();
    }

    /** Lines of the sheet as plain text that fill a page in 11.5 point. */
    private static final double FULL = 47;

    private static final double LARGEST = 11.5;
    private static final double SMALLEST = 7.5;

    /** The more there is on the sheet, the smaller it is written, in points; all of it stays on one page. */
    private static String size(Sheet sheet) {
        double lines = TextSheet.of(sheet).split("\n").length;
        double size = LARGEST * Math.min(1, Math.sqrt(FULL / lines));
        return String.format(Locale.ROOT, "%.1f", Math.max(SMALLEST, size));
    }
}
