package hobside.screen.asked;

import hobside.*;
import hobside.screen.*;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Desk;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LookTest {
    @Test
    void look() {
        for (Size size : new Size[] {Size.HOME, Size.LEAST}) {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Finished.demo("lighter-potato-bake"), Desk.Kept.NOT_YET), "");
        VirtualStage stage = VirtualStage.with(Next.to(Still.fresh().whatIf(bench)), size, e -> Optional.empty());
        System.out.println(stage.play("c r enter").frame().text());
        stage = VirtualStage.with(Next.to(Still.fresh().missing(bench)), size, e -> Optional.empty());
        System.out.println(stage.play("c r enter").frame().text());
        System.out.println(stage.play("down down").frame().text());
        System.out.println(stage.play("escape home down down down enter").frame().text());
        System.out.println(stage.play("escape m enter down down").frame().text());
        stage = VirtualStage.with(Next.to(Still.fresh().asked(bench)), size, e -> Optional.empty());
        System.out.println(stage.type("does oil have less calories").frame().text());
        System.out.println(stage.play("ctrl-u").type("where is the bus stop").frame().text());
        }
    }
}
