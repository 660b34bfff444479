package hobside.screen.clock;

import hobside.screen.Lines;
import hobside.stage.Hindrance;
import hobside.stage.RunningOrder;
import hobside.stage.Way;
import java.util.ArrayList;
import java.util.List;

/** Says in sentences whether it fits, what is done ahead for it, and what stands in the way. */
final class Verdict {

    private static final int LABEL = 44;

    private Verdict() {}

    /** Minutes and seconds, hours in front where there are any. */
    static String clock(int seconds) {
        String rest = two(seconds / 60 % 60) + ":" + two(seconds % 60);
        return seconds >= 3600 ? seconds / 3600 + ":" + rest : rest.startsWith("0") ? rest.substring(1) : rest;
    }

    private static String two(int number) {
        return (number < 10 ? "0" : "") + number;
    }

    static List<String> of(RunningOrder order) {
        List<String> said = new ArrayList<>();
        if (!order.slots().isEmpty()) {
            said.add(time(order) + " " + ahead(order));
        }
        order.outlook().hindrances().forEach(each -> said.add(of(each)));
        return said;
    }

    private static String time(RunningOrder order) {
        int slot = order.outlook().slot();
        String time = clock(order.seconds());
        String sure = order.proof().isShortest() ? "" : " No order is shorter than " + clock(order.proof().bound()) + "; the search stopped there.";
        if (slot == 0) {
            return "It takes " + time + " on stage." + sure;
        }
        int room = slot - order.seconds();
        return (room >= 0 ? "It fits: " + time + " of " + clock(slot) + ", " + clock(room) + " to spare." : "It does not fit: " + time + " for a slot of " + clock(slot) + ".") + sure;
    }

    private static String ahead(RunningOrder order) {
        long off = order.outlook().ways().stream().filter(way -> way != Way.WHOLE).count();
        if (off == 0) {
            return "Nothing has to be done ahead.";
        }
        String least = !order.fits() ? "" : order.proof().isFewest() ? ", the fewest so that it fits, no wait is silent and nobody works long without a word" : ", perhaps not the fewest";
        String swaps = order.ahead().takesSecondLot() ? " A finished pot is brought in: it takes a second lot of food." : "";
        return off + (off == 1 ? " step is" : " steps are") + " not waited for on stage" + least + "." + swaps;
    }

    private static String of(Hindrance hindrance) {
        String tasks = String.join("; ", hindrance.tasks().stream().map(task -> Lines.fit(task, LABEL)).toList());
        return switch (hindrance.kind()) {
            case PRESENTER -> "You alone have " + clock(hindrance.seconds()) + " to say and do, " + clock(hindrance.seconds() - hindrance.of()) + " more than there is. Longest: " + tasks + ".";
            case CHAIN -> "These wait for each other and take " + clock(hindrance.seconds()) + ": " + tasks + ".";
            case CROWD -> hindrance.of() > 0 ? "These get in each other's way, " + clock(hindrance.seconds()) + " where there is room for " + clock(hindrance.of()) + ": " + tasks + "."
                    : "These get in each other's way: " + tasks + ".";
            case NO_HOB -> "There is no hob for: " + tasks + ". Press k.";
            case NO_OVEN -> "There is no oven for: " + tasks + ". Press k.";
            case HOUR -> "It must be over at " + clock(hindrance.of()) + " and cannot be before " + clock(hindrance.seconds()) + ": " + tasks + ".";
            case HOURS -> "The hours you have set cannot all be kept. Take one back with z or l.";
            case SILENT -> "From " + clock(hindrance.of()) + " everything waits and nobody speaks, " + clock(hindrance.seconds()) + " long. Do a step ahead, or add to the talk.";
            case QUIET -> "From " + clock(hindrance.of()) + " you work for " + clock(hindrance.seconds()) + " without a word: " + tasks + ". Speak meanwhile (v), leave it to a helper, or do it ahead.";
        };
    }
}
