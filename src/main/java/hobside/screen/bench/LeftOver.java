package hobside.screen.bench;

import hobside.file.Slates;
import hobside.screen.Lines;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.Typed;
import hobside.screen.ask.Menu;
import hobside.screen.ask.MenuScreen;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Work;
import hobside.screen.packet.PacketScreen;
import hobside.screen.read.ReadScreen;
import hobside.screen.talk.TalkScreen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Offers what was being typed when the program was stopped: to go on with it, to leave it for later, or to throw it away. */
final class LeftOver {

    private LeftOver() {}

    static Next offered(Bench bench, Answer.Left left) {
        Slates.Scrap scrap = left.left().scrap();
        Optional<Screen> again = again(bench, typed(scrap));
        String said = "You had typed: " + scrap.text();
        Menu.Row on = again.isPresent() ? new Menu.Row("go on with it", "", said) : new Menu.Row("read it", "", said);
        List<Menu.Row> rows = List.of(on, new Menu.Row("leave it for later", "", "It is offered again at the next start."),
                new Menu.Row("throw it away", "", "The demo stays as it is; only these words go. " + said));
        Menu menu = new Menu("This was being typed when the program stopped, " + left.when(), scrap.asked(), rows, index -> chosen(index, bench, left.left(), again));
        return Next.to(MenuScreen.of(bench, menu, 0));
    }

    private static Typed typed(Slates.Scrap scrap) {
        return new Typed(new Typed.About(scrap.about().demo(), scrap.about().dish(), scrap.about().spot()), scrap.asked(), scrap.text());
    }

    /** The same question again, with the text in it. */
    private static Optional<Screen> again(Bench bench, Typed left) {
        return BenchUpdate.goingOn(bench, left).or(() -> TalkScreen.goingOn(bench, left)).or(() -> PacketScreen.goingOn(bench, left));
    }

    private static List<String> read(String text, int width) {
        List<String> lines = new ArrayList<>();
        for (String line : text.split("\n")) {
            lines.addAll(Lines.wrap(line, width));
        }
        return lines;
    }

    private static Next chosen(int index, Bench bench, Slates.Left left, Optional<Screen> again) {
        if (index == 2) {
            return Next.doing(bench.saying("Thrown away."), new Work.ForgetTyped(left));
        }
        if (index == 1) {
            return Next.to(bench.saying("Left for later: it is offered again at the next start."));
        }
        return again.map(screen -> Next.doing(screen, new Work.TypeOn(left))).orElseGet(() -> Next.to(ReadScreen.page(bench, left.scrap().asked(),
                width -> read(left.scrap().text(), width))));
    }
}
