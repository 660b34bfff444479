package hobside.talk;

import hobside.guide.Guide;

/** What a serve is of a day, said aloud with the guide's own country or body. */
final class DayShare {

    private DayShare() {}

    static String spoken(Guide.Share share) {
        return share.told();
    }
}
