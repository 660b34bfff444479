package hobside.screen.desk;

import hobside.file.InputProblem;
import hobside.file.Kitchen;
import hobside.file.Loaded;
import hobside.file.Practices;
import hobside.file.Read;
import hobside.file.Saving;
import hobside.file.Study;
import hobside.practice.Report;
import hobside.practice.ReportSheet;
import hobside.talk.Demo;
import hobside.talk.paper.HtmlSheet;
import hobside.talk.paper.Sheet;
import hobside.talk.paper.TextSheet;
import hobside.words.Words;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Carries out what is asked of practice, and stamps the time on it. */
final class Practising {

    /** So many saved demos are practised with; the last saved ones. */
    private static final int MOST_DEMOS = 8;

    private final Kitchen kitchen;
    private final Practices practices;
    private final InstantSource clock;

    Practising(Kitchen kitchen, InstantSource clock) {
        this.kitchen = kitchen;
        this.practices = kitchen.practices();
        this.clock = clock;
    }

    Answer carryOut(Work.Practising work, Study study) {
        if (work instanceof Work.Done done) {
            return logged(practices.done(done.trainee(), clock.millis(), done.done()));
        }
        if (work instanceof Work.Ruled ruled) {
            return logged(practices.ruled(ruled.trainee(), clock.millis(), ruled.ruled()));
        }
        if (work instanceof Work.Erase erase) {
            Optional<String> trouble = practices.erase(erase.trainee(), clock.millis());
            return looked(study, trouble.orElse("Erased: " + erase.trainee() + ". The answers are gone from the logs. Reports that were written before still hold the name: delete them, or write them anew."));
        }
        if (work instanceof Work.GatherFrom gather) {
            return gathered(gather, study);
        }
        if (work instanceof Work.PutSet put) {
            return looked(study, practices.keep(put.set()).said());
        }
        return work instanceof Work.WriteReport report ? looked(study, written(report.language(), study)) : looked(study, "");
    }

    private static Answer logged(Practices.Added added) {
        return new Answer.Logged(added.entry(), added.trouble());
    }

    private Answer gathered(Work.GatherFrom gather, Study study) {
        Optional<Practices.Gathered> gathered = practices.gather(gather.folder());
        String words = gathered.map(each -> (each.copied() == 1 ? "1 log" : each.copied() + " logs") + " copied, " + each.known() + " there already."
                + each.found().problems().stream().findFirst().map(problem -> " " + problem.written()).orElse(""))
                .orElse("That is not the name of a folder.");
        return looked(study, words);
    }

    private Answer looked(Study study, String words) {
        Practices.Found found = practices.all();
        List<InputProblem> problems = new ArrayList<>(found.problems());
        List<Practices.Prepared> sets = practices.sets(problems);
        String said = words.isEmpty() && !problems.isEmpty() ? problems.get(0).written() : words;
        return new Answer.Practised(found, demos(study), sets, new Answer.Practised.Told(clock.millis(), said));
    }

    /** The dishes, and what was saved last. */
    private Map<String, Demo> demos(Study study) {
        Map<String, Demo> demos = new LinkedHashMap<>();
        for (Kitchen.DishFile file : kitchen.dishes()) {
            String name = file.file().substring(file.file().lastIndexOf('/') + 1, file.file().length() - ".json".length());
            kitchen.dish(file, study.shelf()).value().ifPresent(demo -> demos.put(name, demo));
        }
        List<Kitchen.Recent> recent = kitchen.recent();
        for (Kitchen.Recent each : recent.subList(0, Math.min(MOST_DEMOS, recent.size()))) {
            Read<Kitchen.Opened> read = kitchen.open(each.name(), study.shelf());
            // A damaged demo lacks something: nobody is examined on that.
            read.value().filter(opened -> read instanceof Loaded).ifPresent(opened -> demos.put(each.name(), opened.demo()));
        }
        return demos;
    }

    private String written(String language, Study study) {
        Words words = study.words(language);
        Report report = Report.of(practices.all().results());
        Sheet sheet = ReportSheet.of(report, words);
        for (Map.Entry<String, String> form : Map.of("txt", TextSheet.of(sheet), "html", HtmlSheet.of(sheet), "csv", ReportSheet.csv(report, words)).entrySet()) {
            Saving saving = practices.write("report", form.getKey(), form.getValue());
            if (saving instanceof Saving.NotSaved) {
                return saving.said();
            }
        }
        return "Written: practice/report.txt, .html to print, .csv for a spreadsheet.";
    }
}
