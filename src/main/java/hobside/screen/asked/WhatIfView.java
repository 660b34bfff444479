package hobside.screen.asked;

import hobside.screen.Area;
import hobside.screen.Frame;
import hobside.screen.Lines;
import hobside.screen.Style;
import hobside.screen.ask.Cursor;
import hobside.stage.whatif.Ways;
import java.util.List;

/** Draws "what if": above what can be chosen, below what it comes to. */
final class WhatIfView {

    private static final int TOP = 2;

    /** Rows that the result takes when nothing is asked yet, and the rows it should have when something is. */
    private static final int BARE = 8;
    private static final int FULL = 15;
    private static final int LEAST_LIST = 4;

    private WhatIfView() {}

    static void draw(WhatIfScreen screen, Frame frame) {
        title(frame, heading(screen), screen.over());
        int room = frame.height() - TOP - 1;
        int wanted = screen.trial().laid().isEmpty() ? BARE : FULL;
        int list = Math.max(LEAST_LIST, Math.min(rows(screen, frame), room - wanted - 1));
        list(screen, frame.part(new Area(TOP, 0, list, frame.width())));
        frame.horizontal(TOP + list, 0, frame.width() - 1);
        Frame result = frame.part(new Area(TOP + list + 1, 0, room - list - 1, frame.width()));
        if (screen.at().problem().isEmpty()) {
            new TrialPane(result, screen.over().bench()).draw(screen.trial());
        } else {
            new TrialPane(result, screen.over().bench()).draw(screen.trial(), screen.at().problem());
        }
    }

    static void title(Frame frame, String heading, Over over) {
        int at = frame.put(0, 1, heading, Style.TITLE);
        String dish = Lines.fit(over.demo().dish().name(), frame.width() - at - 3);
        frame.putRight(0, frame.width() - 1, dish, Style.QUIET);
        frame.horizontal(1, 0, frame.width() - 1);
    }

    private static String heading(WhatIfScreen screen) {
        String laid = screen.laid().isEmpty() ? "" : " ... and";
        String about = name(screen);
        return "What if" + laid + " ...?" + (screen.at().mode() == WhatIfScreen.Mode.CHOOSE ? " Which ingredient?" : "  " + about);
    }

    private static String name(WhatIfScreen screen) {
        return screen.at().pick().chosen().name();
    }

    private static int rows(WhatIfScreen screen, Frame frame) {
        return switch (screen.at().mode()) {
            case CHOOSE -> screen.at().pick().rows().size();
            case WAYS -> (screen.at().asked().size() + columns(frame) - 1) / columns(frame);
            case AMOUNT -> LEAST_LIST;
        };
    }

    private static void list(WhatIfScreen screen, Frame frame) {
        switch (screen.at().mode()) {
            case CHOOSE -> screen.at().pick().draw(frame);
            case WAYS -> ways(screen.at().asked(), frame);
            case AMOUNT -> amount(screen, frame);
        }
    }

    private static void ways(WhatIfScreen.Asked asked, Frame frame) {
        int columns = columns(frame);
        int wide = frame.width() / columns;
        int first = Lines.firstShown(asked.cursor(), asked.size(), frame.height() * columns);
        for (int i = 0; i < frame.height() * columns && first + i < asked.size(); i++) {
            Frame cell = frame.part(new Area(i % frame.height(), i / frame.height() * wide, 1, wide));
            cell.put(0, 3, Lines.fit(label(asked, first + i), wide - 4), Style.PLAIN);
            Cursor.mark(cell, first + i == asked.cursor());
        }
    }

    /** Where there is room, the ways stand in two columns, so that all of them are seen. */
    private static int columns(Frame frame) {
        return frame.width() >= 76 ? 2 : 1;
    }

    private static String label(WhatIfScreen.Asked asked, int row) {
        List<Ways.Way> ways = asked.ways();
        if (row < ways.size()) {
            return ways.get(row).label();
        }
        return row > ways.size() ? "another amount ... (type it)" : "another food ... (search)";
    }

    private static void amount(WhatIfScreen screen, Frame frame) {
        String now = screen.at().asked().notion().map(notion -> notion.title()).orElseGet(() -> screen.at().pick().chosen().now() + " as planned");
        frame.put(0, 1, Lines.fit("How much of it? Now: " + now, frame.width() - 2), Style.PLAIN);
        frame.put(1, 1, "amount", Style.STRONG);
        screen.at().typing().draw(frame, 1, 8, Math.min(30, frame.width() - 10));
        frame.put(2, 1, Lines.fit("half, 3/4, 75 %, 300 g, 2 cups; +1 is one more of what is written there", frame.width() - 2), Style.QUIET);
    }
}
