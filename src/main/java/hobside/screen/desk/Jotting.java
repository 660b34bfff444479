package hobside.screen.desk;

import hobside.file.Slates;
import hobside.screen.Jot;
import hobside.screen.Message;
import hobside.screen.Typed;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Notes what is half typed, and finds it again after the program was stopped. */
final class Jotting {

    private final Slates slates;
    private final InstantSource clock;
    private boolean troubled;

    Jotting(Slates slates, InstantSource clock) {
        this.slates = slates;
        this.clock = clock;
    }

    /** What was taken but could not be kept stays noted; else a text that is typed no more is wiped off. Trouble is told once. */
    Optional<Message> jotted(Jot jot, boolean unkept) {
        if (jot.typed().isEmpty()) {
            if (!unkept) {
                slates.wipe();
            }
            return Optional.empty();
        }
        Typed typed = jot.typed().get();
        Typed.About about = typed.about();
        Optional<String> trouble = slates.write(new Slates.Scrap(new Slates.About(about.demo(), about.dish(), about.spot()), clock.millis(), typed.asked(), typed.text()));
        boolean told = troubled;
        troubled = trouble.isPresent();
        return told ? Optional.empty() : trouble.map(words -> new Message.Told(new Answer.Failed(words)));
    }

    Optional<Message> carryOut(Work work) {
        if (work instanceof Work.TypeOn on) {
            slates.goOn(on.left());
        }
        if (work instanceof Work.ForgetTyped forget) {
            slates.forget(forget.left());
        }
        return work instanceof Work.LookForTyped look ? slates.left(look.demo(), look.dish()).map(left -> new Message.Told(new Answer.Left(left, when(left)))) : Optional.empty();
    }

    private static String when(Slates.Left left) {
        return DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH).format(Instant.ofEpochMilli(left.scrap().at()).atZone(ZoneId.systemDefault()));
    }
}
