package hobside.screen.asked;

import hobside.file.Study;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.bench.Bench;
import hobside.stage.whatif.Ground;
import hobside.stage.whatif.WhatIf;
import hobside.talk.Demo;
import java.util.function.Function;

/**
 * What an overlay stands over.
 *
 * @param back the screen to go back to; it hears the time and the news from the disk meanwhile
 * @param whatIf the plan as it stands, worked out once
 */
record Over(Screen back, Bench bench, Keep keep, WhatIf whatIf) {

    static Over of(Screen back, Bench bench, Keep keep) {
        return new Over(back, bench, keep, WhatIf.of(bench.demo(), ground(bench)));
    }

    static Ground ground(Bench bench) {
        Study study = bench.desk().study();
        return new Ground(study.books(), study.beside(bench.demo()), study.published(), study.english());
    }

    Demo demo() {
        return bench.demo();
    }

    Over with(Screen other) {
        return new Over(other, bench, keep, whatIf);
    }

    /** The screen below hears a message; the overlay goes on over what it became. */
    static Next relayed(Screen back, Message message, Function<Screen, Screen> over) {
        Next below = back.update(message);
        return new Next(below.screen().map(over), below.effects());
    }
}
