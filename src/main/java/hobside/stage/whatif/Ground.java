package hobside.stage.whatif;

import hobside.guide.GuideBook;
import hobside.ledger.Books;
import hobside.talk.Stand;
import hobside.words.Words;

/**
 * What a "what if" is reckoned and told with.
 *
 * @param beside the guide, the cautions and the tongue of the talk
 * @param published claims and guides of all countries
 * @param english the words of the screens
 */
public record Ground(Books books, Stand.Beside beside, GuideBook published, Words english) {}
