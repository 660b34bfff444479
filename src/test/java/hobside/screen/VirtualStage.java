package hobside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plays keys into screens without a terminal and shows the frames they lead to. */
public final class VirtualStage {
    private final EffectRunner effects;
    private final List<Effect> carriedOut = new ArrayList<>();
    private Visit visit;

    private VirtualStage(Visit visit, EffectRunner effects) {
        this.visit = visit;
        this.effects = effects;
    }

    /** With a first screen at home size and a world that answers nothing. */
    public static VirtualStage with(Screen first) {
        return with(Next.to(first), Size.HOME, effect -> Optional.empty());
    }

    public static VirtualStage with(Next first, Size size, EffectRunner effects) {
        VirtualStage stage = new VirtualStage(Visit.of(first.screen().orElseThrow(), size), effects);
        stage.carryOut(first.effects());
        return stage;
    }

    /** Presses the keys that these words name: "down down enter". */
    public VirtualStage play(String words) {
        Key.parseAll(words).forEach(key -> tell(new Message.KeyPressed(key)));
        return this;
    }

    /** Types a text, one key a character. */
    public VirtualStage type(String text) {
        text.codePoints().forEach(character -> tell(new Message.KeyPressed(Key.typed(character))));
        return this;
    }

    public VirtualStage resize(int width, int height) {
        return tell(new Message.Resized(new Size(width, height)));
    }

    public VirtualStage tell(Message message) {
        if (visit.isOver()) {
            throw new AssertionError("the visit was over before " + message);
        }
        visit = visit.after(message);
        carryOut(visit.due());
        return this;
    }

    /** The effects carried out so far, in order. */
    public List<Effect> carriedOut() {
        return List.copyOf(carriedOut);
    }

    public boolean isOver() {
        return visit.isOver();
    }

    public Frame frame() {
        return visit.frame();
    }

    /** The screen one is on. */
    public Screen screen() {
        return visit.screen().orElseThrow();
    }

    /** What is seen on a terminal that knows only ASCII. */
    public String plainText() {
        Frame plain = new Frame(visit.size().width(), visit.size().height(), Showing.ASCII);
        visit.screen().orElseThrow().view(plain);
        StringBuilder text = new StringBuilder();
        plain.text().chars().forEach(sign -> text.append(sign == '\n' ? '\n' : Glyphs.plain((char) sign)));
        return text.toString();
    }

    /** One line of the frame, without the spaces at its end. */
    public String line(int row) {
        return frame().text().lines().toList().get(row);
    }

    private void carryOut(List<Effect> due) {
        for (Effect effect : due) {
            carriedOut.add(effect);
            effects.carryOut(effect).ifPresent(this::tell);
        }
    }
}
