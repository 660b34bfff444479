package hobside.screen.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hobside.Bundle;
import hobside.file.Kitchen;
import hobside.screen.Message;
import hobside.stage.run.Happening;
import hobside.stage.run.Happening.What;
import hobside.stage.run.Run;
import hobside.stage.run.Runs;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunningTest {

    private static final Run.Head HEAD = Runs.head(Run.Kind.LIVE, "a", "b", "c");

    @TempDir
    private Path folder;
    private Instant now = Instant.parse("2026-11-02T12:00:00Z");
    private Kitchen kitchen;
    private DiskWork disk;

    private final class Clock implements InstantSource {
        @Override
        public Instant instant() {
            return now;
        }
    }

    @BeforeEach
    void started() {
        if (kitchen != null) {
            kitchen.letGo();
        }
        kitchen = Kitchen.at(folder);
        disk = new DiskWork(kitchen, Bundle.STUDY, new Clock());
    }

    private <T extends Answer> T asked(Class<T> kind, Work work) {
        return assertInstanceOf(kind, ((Message.Told) disk.carryOut(work).orElseThrow()).answer());
    }

    private Answer.Happened happened(int seconds, What what, String cue) {
        now = now.plusSeconds(seconds);
        return asked(Answer.Happened.class, new Work.Happened(what, cue, ""));
    }

    @Test
    void the_disk_side_says_when_it_happened() {
        Answer.Begun begun = asked(Answer.Begun.class, new Work.Begin(HEAD.begun(0)));
        assertEquals(now.toEpochMilli(), begun.zero());
        assertEquals(now.toEpochMilli(), begun.run().head().begunAt());
        assertEquals(List.of(), begun.troubles());
        assertEquals(new Answer.Happened(new Happening(7_000, What.ON, "a", ""), Optional.empty()), happened(7, What.ON, "a"));
        Answer.Runs runs = asked(Answer.Runs.class, new Work.Runs("rib-pot"));
        assertEquals(List.of(new Run(begun.run().head(), List.of(new Happening(7_000, What.ON, "a", "")))), runs.runs());
    }

    @Test
    void nothing_happens_before_a_run_has_begun() {
        asked(Answer.Failed.class, new Work.Happened(What.ON, "a", ""));
        asked(Answer.Failed.class, new Work.Resume());
        assertEquals(Optional.empty(), asked(Answer.BrokenOff.class, new Work.LookBack()).run());
    }

    @Test
    void a_live_talk_goes_on_after_the_program_has_stopped() {
        asked(Answer.Begun.class, new Work.Begin(HEAD));
        happened(7, What.ON, "a");
        now = now.plusSeconds(60);
        started();
        assertEquals(1, asked(Answer.BrokenOff.class, new Work.LookBack()).run().orElseThrow().happenings().size());
        Answer.Begun begun = asked(Answer.Begun.class, new Work.Resume());
        assertEquals(new Happening(67_000, What.RESUMED, "", ""), begun.run().happenings().get(1));
        assertEquals("b", begun.run().standing().cue().orElseThrow());
        assertEquals(67_000, begun.run().standing().elapsed(now.toEpochMilli() - begun.zero()));
        assertEquals(77_000, happened(10, What.ON, "b").happening().at());
        happened(1, What.OVER, "");
        started();
        assertEquals(Optional.empty(), asked(Answer.BrokenOff.class, new Work.LookBack()).run());
    }

    @Test
    void a_clock_that_was_set_back_while_the_program_was_away_does_not_stand_still() {
        asked(Answer.Begun.class, new Work.Begin(HEAD));
        happened(600, What.ON, "a");
        now = now.minusSeconds(3_600);
        started();
        Answer.Begun begun = asked(Answer.Begun.class, new Work.Resume());
        assertEquals(600_000, begun.run().happenings().get(1).at());
        assertEquals(605_000, happened(5, What.ON, "b").happening().at());
        assertEquals(605_000, now.toEpochMilli() - begun.zero());
    }

    @Test
    void a_talk_that_is_let_go_is_not_offered_again() {
        asked(Answer.Begun.class, new Work.Begin(HEAD));
        started();
        asked(Answer.BrokenOff.class, new Work.LetGo());
        assertEquals(Optional.empty(), asked(Answer.BrokenOff.class, new Work.LookBack()).run());
        assertTrue(asked(Answer.Runs.class, new Work.Runs("rib-pot")).runs().get(0).isOver());
    }
}
