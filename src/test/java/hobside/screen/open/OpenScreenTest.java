package hobside.screen.open;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.screen.VirtualStage;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Answer;
import hobside.screen.desk.Desk;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The menu of what can be opened. */
class OpenScreenTest {

    @Test
    void a_demo_and_an_own_dish_are_told_with_the_kitchen_they_lie_in() {
        Bench bench = Bench.of(Desk.of(Bundle.STUDY, Bundle.demo("ropewalk-rib-pot"), Desk.Kept.NOT_YET), "");
        List<Answer.Choice> choices = List.of(new Answer.Choice(Answer.Kind.DEMO, "market-day", "Ropewalk rib pot"),
                new Answer.Choice(Answer.Kind.OWN_DISH, "stew.dish.json", "Ferry stew"));
        VirtualStage stage = VirtualStage.with(OpenScreen.of(bench, new Answer.Choices(choices, "/media/stick/hobside")));
        assertTrue(words(stage).contains("Saved as market-day in the scripts folder of /media/stick/hobside, with its plan."), words(stage));
        assertTrue(words(stage.play("down")).contains("From stew.dish.json in your kitchen folder, /media/stick/hobside, as it is cooked."), words(stage));
    }

    /** What is shown, as one line. */
    private static String words(VirtualStage stage) {
        return String.join(" ", stage.frame().text().split("\\s+"));
    }
}
