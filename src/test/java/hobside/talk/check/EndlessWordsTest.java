package hobside.talk.check;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words that somebody pasted by mistake must not hold the program up. */
class EndlessWordsTest {

    @ParameterizedTest
    @ValueSource(strings = {"water fat ", "never low in fat ", "thirty grams of saturated fat less on each plate, ", "drain all ", "1,000", "a hundred and ", "x"})
    void words_without_end_are_checked_to_the_end(String again) {
        String words = again.repeat(60_000 / again.length());
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> Corpus.check().check(words, Place.WHOLE));
    }
}
