package hobside.screen.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import hobside.screen.Next;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Desk;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A menu on the smallest screen. */
class MenuScreenTest {

    private static VirtualStage menu(String intro, int count) {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo("ropewalk-rib-pot"), Desk.Kept.NOT_YET), "");
        List<Menu.Row> rows = IntStream.rangeClosed(1, count).mapToObj(number -> new Menu.Row("row " + number, "", "")).toList();
        return VirtualStage.with(Next.to(MenuScreen.of(bench, new Menu("Choose", intro, rows, index -> Next.to(bench)), 0)), Size.LEAST, effect -> Optional.empty());
    }

    @Test
    void what_is_said_above_the_rows_is_never_cut() {
        VirtualStage menu = menu("The whole talk is written in this language; the figures are the same.", 3);
        assertEquals(" The whole talk is written in this language; the figures", menu.line(2));
        assertEquals(" are the same.", menu.line(3));
        assertEquals("", menu.line(4));
        assertEquals(" ► row 1", menu.line(5));
    }

    @Test
    void the_row_one_is_on_is_seen_wherever_the_list_begins() {
        VirtualStage menu = menu("Short.", 30).play("down ".repeat(29).strip());
        assertEquals(" ► row 30", menu.line(13), "above the rule at row 14");
        assertEquals(" ► row 30", menu("The whole talk is written in this language; the figures are the same.", 30).play("down ".repeat(29).strip()).line(13));
    }
}
