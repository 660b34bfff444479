package hobside.advice;

/** Which of the plans that reach a goal is the best. Ties go to fewer changes, then to the cheaper plan, then to kitchen order. */
public enum Aim {
    /** As few changes as can be. */
    FEWEST_CHANGES,
    /**
     * As little money a serve as can be, even where that takes more changes than the goal asks for; foods without a price are
     * avoided first. To reach a goal without spending more, ask for the fewest changes within a limit of no extra cost.
     */
    LEAST_MONEY,
    /** As close to the dish as can be: the sum of the wishes' departures. */
    LEAST_DEPARTURE,
    /** As little saturated fat a serve as can be. */
    MOST_SAVING
}
