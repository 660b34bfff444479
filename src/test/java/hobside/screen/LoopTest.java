package hobside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class LoopTest {
    private static final Instant NOON = Instant.parse("2025-06-01T12:00:00Z");

    private final List<String> forced = new ArrayList<>();

    /** A hall that hands out prepared messages and notes what is done with it. */
    private static class FakeHall implements Hall {
        final List<String> notes = new ArrayList<>();
        private final Iterator<Message> messages;
        private Size size = Size.HOME;

        FakeHall(Stream<Message> messages) {
            this.messages = messages.iterator();
        }

        static FakeHall with(String keys) {
            return new FakeHall(Key.parseAll(keys).stream().map(Message.KeyPressed::new));
        }

        @Override
        public void enter() {
            notes.add("enter");
        }

        @Override
        public void leave() {
            notes.add("leave");
        }

        @Override
        public Size size() {
            return size;
        }

        @Override
        public synchronized void paint(Frame frame) {
            List<String> lines = frame.text().lines().toList();
            notes.add(String.join("|", lines.subList(0, 3)));
            notifyAll();
        }

        @Override
        public Optional<Message> read() {
            return messages.hasNext() ? Optional.of(messages.next()) : Optional.empty();
        }

        @Override
        public void whenResized(Runnable resized) {}

        @Override
        public void pause() {
            notes.add("pause");
            size = new Size(100, 30);
        }
    }

    @Test
    void each_key_is_one_picture_and_leaving_gives_the_screen_back() throws IOException {
        FakeHall hall = FakeHall.with("x y q");
        assertEquals(Loop.DONE, loop(hall).run(Next.to(Counter.fresh())));
        assertEquals(
                List.of("enter", "keys 0||80 x 24", "keys 0||80 x 24", "keys 1||80 x 24", "keys 2||80 x 24", "leave"),
                hall.notes);
        assertEquals(List.of(), forced);
    }

    @Test
    void the_first_picture_stands_before_the_first_work_is_done() throws IOException {
        FakeHall hall = FakeHall.with("q");
        loop(hall).run(Next.doing(Counter.fresh(), new Counter.Ask("load")));
        assertEquals("keys 0||80 x 24", hall.notes.get(1));
        assertEquals("keys 0|told load|80 x 24", hall.notes.get(2));
    }

    @Test
    void a_closed_terminal_ends_the_visit_by_force() throws IOException {
        FakeHall hall = FakeHall.with("x");
        assertEquals(Loop.HUNG_UP, loop(hall).run(Next.to(Counter.fresh())));
        assertEquals(List.of("forced"), forced);
        assertTrue(hall.notes.contains("leave"));
    }

    @Test
    void suspending_leads_back_to_a_whole_picture_of_the_new_size() throws IOException {
        FakeHall hall = FakeHall.with("x ctrl-z q");
        loop(hall).run(Next.to(Counter.fresh()));
        assertEquals("keys 1||100 x 30", hall.notes.get(hall.notes.indexOf("pause") + 1));
    }

    @Test
    void a_fault_gives_the_screen_back_first() {
        FakeHall hall = FakeHall.with("!");
        Exception fault = assertThrows(IllegalStateException.class, () -> loop(hall).run(Next.to(Counter.fresh())));
        assertEquals("the screen fell over", fault.getMessage());
        assertEquals("leave", hall.notes.get(hall.notes.size() - 1));
    }

    @Test
    void a_screen_is_woken_at_the_time_it_asked_for() throws IOException {
        FakeHall hall = FakeHall.with("w q");
        FakeHall patient = new FakeHall(Stream.empty()) {
            @Override
            public synchronized Optional<Message> read() {
                Optional<Message> next = hall.read();
                if (next.equals(Optional.of(new Message.KeyPressed(Key.typed('q'))))) {
                    waitForPicture();
                }
                return next;
            }

            private boolean isWoken() {
                return notes.contains("keys 1|woken " + NOON + "|80 x 24");
            }

            private synchronized void waitForPicture() {
                try {
                    while (!isWoken()) {
                        wait();
                    }
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
            }
        };
        assertEquals(Loop.DONE, loop(patient).run(Next.to(Counter.fresh())));
    }

    private Loop loop(Hall hall) {
        EffectRunner answering = effect -> Optional.of(new Message.Told(((Counter.Ask) effect).question()));
        return new Loop(hall, new Outside(answering, () -> NOON, () -> forced.add("forced")));
    }
}
