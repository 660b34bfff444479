package hobside.screen.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.screen.Effect;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Size;
import hobside.screen.VirtualStage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlaceScreenTest {

    private static VirtualStage stage(Size size) {
        return VirtualStage.with(Next.to(PlaceScreen.of("/media/stick/hobside", "~/hobside-kitchen")), size, PlaceScreenTest::answer);
    }

    private static Optional<Message> answer(Effect effect) {
        boolean wrong = effect instanceof Place.Keep keep && keep.words().equals("/media/stick");
        return Optional.of(new Message.Told(wrong ? new Place.Refused("Nothing can be kept there either.") : new Place.Settled()));
    }

    @Test
    void enter_takes_the_folder_that_is_offered() {
        VirtualStage stage = stage(Size.HOME).play("enter");
        assertEquals(List.of(new Place.Keep("~/hobside-kitchen")), stage.carriedOut());
        assertTrue(stage.isOver());
    }

    @Test
    void the_first_letter_takes_the_place_of_what_is_offered_and_a_refusal_asks_again() {
        VirtualStage stage = stage(Size.HOME).type("/media/stick").play("enter");
        assertFalse(stage.isOver());
        assertTrue(stage.plainText().contains("Nothing can be kept there either."));
        stage.play("ctrl-u").type("/tmp/work").play("enter");
        assertEquals(new Place.Keep("/tmp/work"), stage.carriedOut().get(1));
        assertTrue(stage.isOver());
    }

    @Test
    void escape_only_looks_and_ctrl_c_leaves_without_asking_for_anything() {
        assertEquals(List.of(new Place.OnlyLook()), stage(Size.HOME).play("escape").carriedOut());
        VirtualStage left = stage(Size.HOME).play("ctrl-c");
        assertTrue(left.isOver());
        assertEquals(List.of(), left.carriedOut());
    }

    @Test
    void all_of_it_fits_on_the_smallest_screen() {
        VirtualStage stage = stage(new Size(60, 20)).type("/media/stick").play("enter");
        String seen = stage.plainText();
        assertTrue(seen.contains("Where shall your work be kept?") && seen.contains("/media/stick/hobside") && seen.contains("Folder  /media/stick"), seen);
        assertTrue(seen.contains("Nothing can be kept there either.") && seen.contains("only look, keep nothing"), seen);
        assertTrue(seen.lines().allMatch(line -> line.length() <= 60), seen);
    }
}
