package hobside.screen;

import java.time.Duration;

/** A screen for tests: counts keys, asks the world when told to, and leaves on q. */
public record Counter(int keys, String heard) implements Screen {
    /** What the test world is asked. */
    public record Ask(String question) implements Effect {}

    public static Counter fresh() {
        return new Counter(0, "");
    }

    @Override
    public Next update(Message message) {
        if (message instanceof Message.KeyPressed pressed) {
            return afterKey(pressed.key());
        }
        if (message instanceof Message.Pasted pasted) {
            return Next.to(hearing("pasted " + pasted.text()));
        }
        if (message instanceof Message.Told told) {
            return Next.to(hearing("told " + told.answer()));
        }
        return Next.to(message instanceof Message.Woken woken ? hearing("woken " + woken.now()) : this);
    }

    @Override
    public void view(Frame frame) {
        frame.put(0, 0, "keys " + keys, Style.STRONG);
        frame.put(1, 0, heard);
        frame.put(2, 0, frame.width() + " x " + frame.height());
    }

    private Next afterKey(Key key) {
        Counter more = new Counter(keys + 1, heard);
        return switch (key.word()) {
            case "q" -> Next.leave(new Ask("last"));
            case "a" -> Next.doing(more, new Ask("name"));
            case "w" -> Next.doing(more, new Wake(Duration.ofMillis(1)));
            case "!" -> throw new IllegalStateException("the screen fell over");
            default -> Next.to(more);
        };
    }

    private Counter hearing(String news) {
        return new Counter(keys, news);
    }
}
