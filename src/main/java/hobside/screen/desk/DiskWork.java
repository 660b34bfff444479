package hobside.screen.desk;

import hobside.talk.Demo;
import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Read;
import hobside.file.Salvaged;
import hobside.file.Saving;
import hobside.file.Scripts;
import hobside.file.Shown;
import hobside.file.Study;
import hobside.file.Version;
import hobside.screen.Effect;
import hobside.screen.EffectRunner;
import hobside.screen.Jot;
import hobside.screen.Message;
import hobside.stage.run.Measured;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Carries out the work that screens ask of the disk, in the kitchen folder. Every failure comes back as a sentence. */
public final class DiskWork implements EffectRunner {

    private final Kitchen kitchen;
    private Study study;
    private final InstantSource clock;
    private final Map<String, Version> versions = new HashMap<>();
    private String remembered = "";
    private Running running;
    private Practising practising;
    private Jotting jotting;
    private boolean unkept;
    private long stocked;

    public DiskWork(Kitchen kitchen, Study study, InstantSource clock) {
        this.kitchen = kitchen;
        this.study = study;
        this.clock = clock;
        this.stocked = kitchen.stocked();
    }

    /** Another copy of the program may have changed the foods: whatever is saved must be readable with those that are there now. */
    private void lookAtFoods() {
        long now = kitchen.stocked();
        if (now != stocked) {
            stocked = now;
            study = study.with(Library.load(kitchen));
        }
    }

    @Override
    public Optional<Message> carryOut(Effect effect) {
        if (effect instanceof Jot jot) {
            return jotting().jotted(jot, unkept);
        }
        if (effect instanceof Work.LookForTyped) {
            // What telling the time needs is read now, after the first picture: later the program's own stick may have been pulled.
            time();
            Kitchen.holdOpen();
        }
        if (effect instanceof Work.LookForTyped || effect instanceof Work.TypeOn || effect instanceof Work.ForgetTyped) {
            return jotting().carryOut((Work) effect);
        }
        if (effect instanceof Work.LeaveTalk) {
            running().left();
            return Optional.empty();
        }
        return effect instanceof Work work ? Optional.of(new Message.Told(answered(work))) : Optional.empty();
    }

    /** The program's own files may be gone, with the stick that it was started from: then it goes on with what it has in memory. */
    private Answer answered(Work work) {
        try {
            return answer(work);
        } catch (LinkageError | InternalError gone) {
            String words = "Part of the program itself cannot be read: was its stick taken out? Put it back, then press s.";
            return work instanceof Work.Keep || work instanceof Work.Save ? new Answer.NotKept("Not saved. " + words) : new Answer.Failed(words);
        }
    }

    private Answer answer(Work work) {
        if (work instanceof Work.Keep || work instanceof Work.Save || work instanceof Work.Stock) {
            lookAtFoods();
        }
        if (work instanceof Work.Keep keep) {
            Saving saving = kitchen.save(keep.demo(), version(keep.name(), keep.demo()), study.shelf());
            // A step is kept without a word, unless it went elsewhere than before, as when another window has saved there.
            return kept(saving, saving instanceof Saving.Saved saved && saved.isElsewhere() ? saved.said() : "");
        }
        if (work instanceof Work.Save save) {
            return saved(save);
        }
        if (work instanceof Work.Stock stock) {
            Stocking.Done done = new Stocking(kitchen, study, clock).carryOut(stock);
            study = done.study();
            return done.answer();
        }
        if (work instanceof Work.Running run) {
            return running().carryOut(run);
        }
        if (work instanceof Work.Practising practising) {
            return practising().carryOut(practising, study);
        }
        return work instanceof Work.Open open ? opened(open.choice()) : choices();
    }

    /** Made when it is first needed, which is after the first picture. */
    private Running running() {
        running = running == null ? new Running(kitchen.runs(), clock) : running;
        return running;
    }

    /** Made when it is first needed, which is after the first picture. */
    private Jotting jotting() {
        jotting = jotting == null ? new Jotting(kitchen.slates(), clock) : jotting;
        return jotting;
    }

    /** Made when it is first needed; it keeps the random name of this start of the program. */
    private Practising practising() {
        practising = practising == null ? new Practising(kitchen, clock) : practising;
        return practising;
    }

    private Version version(String name, Demo demo) {
        return versions.getOrDefault(name, Version.fresh(demo.dish().name()));
    }

    private Answer kept(Saving saving, String words) {
        unkept = saving instanceof Saving.NotSaved;
        if (saving instanceof Saving.Saved saved) {
            Version version = saved.version();
            versions.put(version.name(), version);
            remember(version.name());
            return new Answer.Stored(new Desk.Kept(version.name(), "kept " + time()), words);
        }
        return new Answer.NotKept(saving.said());
    }

    private void remember(String name) {
        if (!name.equals(remembered)) {
            kitchen.remember(name);
            remembered = name;
        }
    }

    private String time() {
        return DateTimeFormatter.ofPattern("HH:mm").format(clock.instant().atZone(ZoneId.systemDefault()));
    }

    private Answer saved(Work.Save save) {
        Saving demo = kitchen.save(save.demo(), version(save.name(), save.demo()), study.shelf());
        if (!(demo instanceof Saving.Saved saved)) {
            return new Answer.NotKept(demo.said());
        }
        String name = saved.version().name();
        for (Scripts.Printed paper : Scripts.all(name, save.demo(), study, measured(name, save.demo()))) {
            Saving printed = kitchen.write(paper.name(), paper.ending(), paper.text());
            if (printed instanceof Saving.NotSaved) {
                return new Answer.Failed(printed.said());
            }
        }
        return kept(demo, "Saved: scripts/" + name + ".txt and handout; .demo.json to open again.");
    }

    /** What rehearsals have measured goes onto paper too. */
    private Map<String, Integer> measured(String name, Demo demo) {
        return Measured.of(kitchen.runs().of(name).runs()).seconds(Scripts.talk(demo, study));
    }

    private Answer choices() {
        List<Answer.Choice> choices = new ArrayList<>();
        kitchen.recent().forEach(demo -> choices.add(new Answer.Choice(Answer.Kind.DEMO, demo.name(), demo.title())));
        kitchen.dishes().forEach(dish -> choices.add(new Answer.Choice(dish.own() ? Answer.Kind.OWN_DISH : Answer.Kind.BUNDLED_DISH,
                dish.file(), dish.title())));
        return new Answer.Choices(choices, Shown.of(kitchen.folder().toString()));
    }

    /** Opens a choice; also used for what the program opens with. */
    public Answer opened(Answer.Choice choice) {
        return choice.kind() == Answer.Kind.DEMO ? demo(choice.name()) : dish(choice);
    }

    private Answer demo(String name) {
        Read<Kitchen.Opened> read = kitchen.open(name, study.shelf());
        if (read.value().isEmpty()) {
            return new Answer.Failed("Not opened, and left as it is. " + read.problems().get(0).written());
        }
        versions.put(name, read.value().get().version());
        remember(name);
        Desk.Kept kept = new Desk.Kept(name, "kept in " + name);
        return read instanceof Salvaged<Kitchen.Opened> part
                ? new Answer.Opened(part.content().demo(), kept, "Opened " + name + " in part: the file is damaged.", part.missing())
                : new Answer.Opened(read.value().get().demo(), kept, "Opened " + name + ".");
    }

    private Answer dish(Answer.Choice choice) {
        boolean own = choice.kind() == Answer.Kind.OWN_DISH;
        Read<Demo> read = kitchen.dish(new Kitchen.DishFile(choice.name(), choice.title(), own), study.shelf());
        if (read instanceof Salvaged<Demo> part) {
            return new Answer.Opened(part.content(), Desk.Kept.NOT_YET, "Opened in part: the file of this dish is damaged.", part.missing());
        }
        return read.value().<Answer>map(demo -> new Answer.Opened(demo, Desk.Kept.NOT_YET, "This is the dish as it is cooked here. Choose an ingredient and press Enter."))
                .orElseGet(() -> new Answer.Failed("Not opened, and left as it is. " + read.problems().get(0).written()));
    }
}
