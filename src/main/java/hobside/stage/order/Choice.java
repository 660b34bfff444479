package hobside.stage.order;

/** What to decide next: of the job that has made the most trouble of late, whether it starts in the first half of its time. */
final class Choice {

    private final Model model;
    private final Trail trail;
    private final Activity activity;

    Choice(Model model, Activity activity) {
        this.model = model;
        this.trail = model.engine.trail;
        this.activity = activity;
    }

    /** False when everything is decided. */
    boolean decide() {
        int most = -1;
        for (int i = 0; i < model.facts.jobs; i++) {
            if (!trail.isFixed(i) && (most < 0 || activity.of(i) > activity.of(most))) {
                most = i;
            }
        }
        if (most >= 0) {
            int first = trail.least[2 * most];
            int last = -trail.least[2 * most + 1];
            trail.decide(2 * most + 1, -(first + (last - first) / 2));
        }
        return most >= 0;
    }
}
