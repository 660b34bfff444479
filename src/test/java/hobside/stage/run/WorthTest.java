package hobside.stage.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.talk.Cue;
import hobside.talk.Talk;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each sort of cue is worth when time runs short; the figures are those that the manual tells, ours, without a source. */
class WorthTest {

    @ParameterizedTest
    @CsvSource({
        "change:trim:ribs/why, SAY, CHANGE, 9",
        "change:trim:ribs/do, DO, CHANGE, 10",
        "change:trim:ribs/show, SHOW, CHANGE, 8",
        "change:trim:ribs/hot, TAKE_CARE, CHANGE, 7",
        "change:trim:ribs/told, SAY, CHANGE, 6",
        "change:trim:ribs/ask, ASK, CHANGE, 3",
        "wait:1/lift, DO, WAIT, 10",
        "wait:1/told, SAY, WAIT, 3",
        "table/serve, DO, TABLE, 10",
        "table/told, SAY, TABLE, 4",
        "welcome/most, ASK, WELCOME, 3",
        "welcome/hello, SAY, WELCOME, 5",
        "recap/ask, ASK, RECAP, 3",
        "recap/told, SAY, RECAP, 5",
        "aside:1/told, SAY, ASIDE, 2",
        "questions:salt/ask, ASK, QUESTIONS, 2",
        "bench/in:ribs, SAY, BENCH, 1"})
    void each_sort_of_cue_has_its_worth(String key, Cue.Kind kind, Talk.Part part, int worth) {
        assertEquals(worth, Worth.of(new Cue(key, kind, new Cue.Text("Words", "Words"), Cue.Details.SPOKEN), part));
    }
}
