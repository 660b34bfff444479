package hobside.stage.whatif;

import java.util.List;

/**
 * A question that was prepared for, with its answer as it stands in the talk, the myths or the cautions: nothing here is made up on
 * the spot.
 *
 * @param key what it is known by: {@code questions:oil}, {@code myth:light:cream}, {@code change:trim:ribs}, {@code care:allergens}
 * @param question as it was foreseen, in the language of the talk
 * @param answer in full, in the language of the talk
 * @param also other words under which it may be looked for, such as the same in another language; never shown
 */
public record Prepared(String key, String question, String answer, List<String> also) {
    public Prepared {
        also = List.copyOf(also);
    }

    Prepared with(List<String> others) {
        return new Prepared(key, question, answer, others);
    }
}
