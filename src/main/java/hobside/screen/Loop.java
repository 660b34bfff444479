package hobside.screen;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The only loop and the only threads: wait, message, update, effects, view, paint. It waits without polling, and its
 * reader reads only when asked, so that no thread hangs in a read when the user leaves.
 */
public final class Loop {
    /** The user left. */
    public static final int DONE = 0;
    /** The terminal went away; the number that shells give to a hang-up. */
    public static final int HUNG_UP = 129;

    private static final long NEVER = Long.MAX_VALUE;
    private static final long LONGEST_TURN_SECONDS = 2;

    private final Hall hall;
    private final Outside outside;
    private final BlockingQueue<Arrival> arrivals = new LinkedBlockingQueue<>();
    private final Semaphore asked = new Semaphore(0);
    private final ReentrantLock turn = new ReentrantLock();
    private final AtomicBoolean ended = new AtomicBoolean();
    private Visit visit;
    private boolean reading;
    private long wakeAt = NEVER;

    /** Something that woke the loop: a message, or that none can come any more, or a new size still to be looked up. */
    private record Arrival(Cause cause, Optional<Message> message) {
        boolean isSuspension() {
            return message.isPresent()
                    && message.get() instanceof Message.KeyPressed pressed
                    && pressed.key().isCtrl('z');
        }
    }

    // Named classes here instead of lambdas: the first lambda of a program costs as much time as all of the first frame.

    private final class Ending extends Thread {
        Ending() {
            super("forced exit");
        }

        @Override
        public void run() {
            endByForce();
        }
    }

    private final class Reader extends Thread {
        Reader() {
            super("keys");
            setDaemon(true);
        }

        @Override
        public void run() {
            readWhenAsked();
        }
    }

    /** Begins to listen for new sizes beside the first keys, because it takes a moment; then hears of each. */
    private final class SizeWatch extends Thread {
        SizeWatch() {
            super("sizes");
            setDaemon(true);
        }

        @Override
        public void run() {
            hall.whenResized(new Runnable() {
                @Override
                public void run() {
                    arrivals.add(new Arrival(Cause.SIZE, Optional.empty()));
                }
            });
        }
    }

    private enum Cause { READER, SIZE, TIME }

    public Loop(Hall hall, Outside outside) {
        this.hall = hall;
        this.outside = outside;
    }

    /**
     * Shows the first screen, then carries out its effects, and goes on until the user leaves. The terminal is given back
     * on every way out. Returns the exit code.
     */
    public int run(Next first) throws IOException {
        Runtime.getRuntime().addShutdownHook(new Ending());
        try {
            open(first);
            return goOn();
        } catch (InterruptedException e) {
            throw new IllegalStateException("the loop was interrupted", e);
        } finally {
            ended.set(true);
            hall.leave();
        }
    }

    private void open(Next first) throws IOException {
        hall.enter();
        visit = Visit.of(first.screen().orElseThrow(), hall.size(), hall.showing());
        hall.paint(visit.frame());
        new Reader().start();
        new SizeWatch().start();
        turn(visit.owing(first.effects()), Optional.empty());
    }

    private int goOn() throws IOException, InterruptedException {
        while (!visit.isOver()) {
            Arrival arrival = next();
            if (arrival.cause() == Cause.READER && arrival.message().isEmpty()) {
                runForcedExit();
                return HUNG_UP;
            }
            take(arrival);
        }
        return DONE;
    }

    private Arrival next() throws InterruptedException {
        if (!reading) {
            reading = true;
            asked.release();
        }
        Arrival arrival =
                wakeAt == NEVER ? arrivals.take() : arrivals.poll(wakeAt - System.nanoTime(), TimeUnit.NANOSECONDS);
        if (arrival == null) {
            wakeAt = NEVER;
            return new Arrival(Cause.TIME, Optional.of(new Message.Woken(outside.clock().instant())));
        }
        reading = reading && arrival.cause() != Cause.READER;
        return arrival;
    }

    private void take(Arrival arrival) throws IOException {
        if (arrival.isSuspension()) {
            hall.pause();
            turn(visit, Optional.of(new Message.Resized(hall.size())));
        } else if (arrival.cause() == Cause.SIZE) {
            turn(visit, Optional.of(new Message.Resized(hall.size())));
        } else {
            turn(visit, arrival.message());
        }
    }

    /**
     * One turn: the message, a picture of where it led, the effects it brought up and their answers, and a picture of those. The
     * first picture does not wait for the disk; the next message does.
     */
    private void turn(Visit from, Optional<Message> message) throws IOException {
        turn.lock();
        try {
            visit = settled(from, message);
            if (!visit.isOver()) {
                hall.paint(visit.frame());
            }
        } finally {
            turn.unlock();
        }
    }

    private Visit settled(Visit from, Optional<Message> message) throws IOException {
        Visit now = from;
        Deque<Message> waiting = new ArrayDeque<>();
        if (message.isPresent()) {
            waiting.add(message.get());
        } else {
            carryOut(now, waiting);
        }
        while (!waiting.isEmpty() && !now.isOver()) {
            now = now.after(waiting.remove());
            if (!now.due().isEmpty() && !now.isOver()) {
                hall.paint(now.frame());
            }
            carryOut(now, waiting);
        }
        return now;
    }

    private void carryOut(Visit now, Deque<Message> answers) {
        for (Effect effect : now.due()) {
            if (effect instanceof Wake wake) {
                wakeAt = System.nanoTime() + wake.after().toNanos();
            } else {
                Optional<Message> answer = outside.effects().carryOut(effect);
                if (answer.isPresent()) {
                    answers.add(answer.get());
                }
            }
        }
    }

    private void readWhenAsked() {
        Optional<Message> message;
        do {
            asked.acquireUninterruptibly();
            message = readOrEnd();
            arrivals.add(new Arrival(Cause.READER, message));
        } while (message.isPresent());
    }

    private Optional<Message> readOrEnd() {
        try {
            return hall.read();
        } catch (IOException e) {
            // A terminal that has been closed answers with an error instead of an end.
            return Optional.empty();
        }
    }

    /** Runs while the virtual machine shuts down. The work comes first: writing to a dead terminal may hang. */
    private void endByForce() {
        if (ended.get()) {
            return;
        }
        try {
            // Not beside a running effect, unless that effect is what hangs.
            turn.tryLock(LONGEST_TURN_SECONDS, TimeUnit.SECONDS);
            runForcedExit();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            hall.leave();
        }
    }

    private void runForcedExit() {
        if (ended.compareAndSet(false, true)) {
            outside.onForcedExit().run();
        }
    }
}
