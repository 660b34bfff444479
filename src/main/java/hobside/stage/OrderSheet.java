package hobside.stage;

import hobside.dish.Station;
import hobside.talk.Stand;
import hobside.talk.paper.Block;
import hobside.talk.paper.Sheet;
import hobside.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The running order as it hangs on the kitchen wall: what is done ahead, then who does what at which minute. */
public final class OrderSheet {

    private final RunningOrder order;
    private final Words words;
    private final List<Block> blocks = new ArrayList<>();

    private OrderSheet(RunningOrder order, Words words) {
        this.order = order;
        this.words = words;
    }

    public static Sheet of(RunningOrder order, Stand stand) {
        OrderSheet sheet = new OrderSheet(order, stand.words());
        sheet.write();
        String title = sheet.say("title", Map.of("dish", order.told().title()));
        return new Sheet(new Sheet.Front(title, stand.words().language().code(), Sheet.Look.LARGE), sheet.blocks);
    }

    private String say(String key, Map<String, String> gaps) {
        return words.say("paper.order." + key, gaps);
    }

    private String say(String key) {
        return say(key, Map.of());
    }

    private void write() {
        if (order.slots().isEmpty()) {
            blocks.add(new Block.Paragraph(say("none")));
            return;
        }
        blocks.add(new Block.Paragraph(say("time", Map.of("time", clock(order.seconds())))));
        blocks.add(new Block.Heading(say("ahead")));
        List<String> ahead = order.ahead().steps().stream().map(this::ahead).toList();
        blocks.add(ahead.isEmpty() ? new Block.Paragraph(say("nothing")) : new Block.Checks(ahead, false));
        if (order.ahead().takesSecondLot()) {
            blocks.add(new Block.Box("", List.of(say("second"), say("keep")), false));
        }
        blocks.add(new Block.Heading(say("stage")));
        blocks.add(new Block.Table(List.of(say("at"), say("who"), say("what"), say("lasts")), rows(), 0));
    }

    private String ahead(Ahead.Item item) {
        return item.label() + (item.second() ? " " + say("shown") : "");
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        int next = 0;
        for (Slotted slot : order.slots()) {
            for (; next < order.silences().size() && order.silences().get(next).from() <= slot.start(); next++) {
                rows.add(wait(order.silences().get(next)));
            }
            rows.add(List.of(clock(slot.start()), who(slot), what(slot), clock(slot.task().seconds())));
        }
        order.silences().subList(next, order.silences().size()).forEach(silence -> rows.add(wait(silence)));
        return rows;
    }

    private String what(Slotted slot) {
        boolean begun = slot.task().kind() == Task.Kind.HANDS && order.ahead().swaps().contains(slot.task().key());
        return begun ? say("begun", Map.of("words", slot.task().label())) : slot.task().label();
    }

    private List<String> wait(Silence silence) {
        String key = silence.isLong() ? "wait-silent" : !silence.filled().isEmpty() ? "wait-asked" : silence.isOpen() ? "wait-open" : "wait";
        return List.of(clock(silence.from()), "", say(key, Map.of("n", Integer.toString(silence.filled().size()))), clock(silence.until() - silence.from()));
    }

    private String who(Slotted slot) {
        Task.Load load = slot.task().load();
        Map<String, String> lane = Map.of("n", Integer.toString(slot.lane()));
        if (slot.task().kind() == Task.Kind.COOKS) {
            return load.on() == Station.HOB ? say("hob", lane) : load.on() == Station.OVEN ? say("oven", lane) : say("itself");
        }
        return load.helper() ? say("helper") : say("you");
    }

    private static String clock(int seconds) {
        return seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
    }
}
