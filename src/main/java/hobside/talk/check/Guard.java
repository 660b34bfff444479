package hobside.talk.check;

/** Where a denial takes a pattern back. */
enum Guard {
    /** Nowhere: the pattern is itself a denial, as in "no fat at all". */
    NONE,
    /** Before it in the same clause: "nobody has to give up ribs". */
    BEFORE,
    /** Anywhere in the sentence: "adding water does not take fat out". */
    SENTENCE
}
