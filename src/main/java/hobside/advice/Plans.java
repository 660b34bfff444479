package hobside.advice;

import hobside.dish.Change;
import hobside.dish.Plan;
import java.util.List;

/** Plans with wishes in them. */
final class Plans {

    private Plans() {}

    /** The plan with a change in its slot, switched on. */
    static Plan with(Plan plan, Change change) {
        Plan with = plan.with(change);
        return with.edited(with.slot(change.slot()).orElseThrow(), line -> line.on() ? line : line.toggled());
    }

    static Plan with(Plan plan, List<Wish> wishes) {
        Plan all = plan;
        for (Wish wish : wishes) {
            all = with(all, wish.change());
        }
        return all;
    }
}
