package hobside.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hobside.Bundle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a trainer would say of these questions; from memory, no source. The worst fault is the one that is told. */
class OpenQuestionTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "How would you do it at home?          | '' | 1",
        "And how?                              | '' | 1",
        "Tell me about it                      | '' | 1",
        "Can you show us the ribs?             | '' | 1",
        "CAN you see it?                       | asks-closed | 0",
        "Is it clear why we do it?             | asks-closed | 0",
        "You can see it, can you               | asks-nothing | 0",
        "It goes away, doesn’t it?             | asks-leading | 0",
        "Why did we do it, right?              | asks-leading | 0",
        "Can you tell me, don't you agree?     | asks-leading | 0",
        "Somehow the fat goes                  | asks-nothing | 0",
        "Isomorphic                            | asks-nothing | 0",
        "is                                    | asks-closed | 0",
        "how                                   | '' | 1",
        "  ...why--not?                        | '' | 1",
        "!                                     | asks-nothing | 0",
    })
    void a_question_is_open_closed_leading_or_none(String question, String mistake, double score) {
        Outcome outcome = OpenQuestion.in(Bundle.STUDY.english()).judged(question);
        assertEquals(mistake, outcome.mistake());
        assertEquals(score, outcome.score());
        assertEquals(1, outcome.said().size());
    }
}
