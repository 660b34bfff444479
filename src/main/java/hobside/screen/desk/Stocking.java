package hobside.screen.desk;

import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.OwnFoods;
import hobside.file.PriceFile;
import hobside.file.Saving;
import hobside.file.Study;
import hobside.food.Food;
import hobside.food.PriceList;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/** Carries out what is asked of the user's own foods and prices. Afterwards the kitchen is read anew, so that what is known is what is on the disk. */
final class Stocking {

    private final Kitchen kitchen;
    private final Study study;
    private final InstantSource clock;

    /** What is known from now on, and the answer. */
    record Done(Study study, Answer answer) {}

    Stocking(Kitchen kitchen, Study study, InstantSource clock) {
        this.kitchen = kitchen;
        this.study = study;
        this.clock = clock;
    }

    Done carryOut(Work.Stock work) {
        if (work instanceof Work.PutFood put) {
            return putFood(put);
        }
        if (work instanceof Work.DeleteFood delete) {
            return deleted(delete.food(), kitchen.foods().delete(delete.food(), study.shelf()));
        }
        if (work instanceof Work.PutPrices put) {
            PriceFile dated = dated(put.list());
            return priced(kitchen.prices().save(dated, study.shelf()), Optional.of(dated));
        }
        return work instanceof Work.UsePrices use ? priced(kitchen.prices().use(use.list()), Optional.empty())
                : priced(kitchen.prices().delete(((Work.DeletePrices) work).list()), Optional.empty());
    }

    private Study anew() {
        return study.with(Library.load(kitchen));
    }

    private Done failed(Saving saving) {
        return new Done(study, new Answer.Failed(saving.said()));
    }

    private Done putFood(Work.PutFood work) {
        OwnFoods.Put put = work.instead().isPresent() ? kitchen.foods().replace(work.instead().get(), work.food(), study.shelf())
                : kitchen.foods().add(work.food(), study.shelf());
        if (put.saving() instanceof Saving.NotSaved) {
            return failed(put.saving());
        }
        Study now = anew();
        return new Done(now, new Answer.Shelved(now, work.instead(), Optional.of(put.food()), put.saving().said()));
    }

    private Done deleted(Food food, Saving saving) {
        if (saving instanceof Saving.NotSaved) {
            return failed(saving);
        }
        Study now = anew();
        return new Done(now, new Answer.Shelved(now, Optional.of(food), Optional.empty(), saving.said()));
    }

    private Done priced(Saving saving, Optional<PriceFile> written) {
        if (!(saving instanceof Saving.Saved saved)) {
            return failed(saving);
        }
        Study now = anew();
        Optional<PriceFile> list = written.map(each -> new PriceFile(each.list(), Optional.of(saved.version())));
        return new Done(now, new Answer.Priced(now, list, saving.said()));
    }

    private PriceFile dated(PriceFile file) {
        PriceList.Heading heading = file.list().heading();
        if (!heading.date().isEmpty()) {
            return file;
        }
        String today = LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()).toString();
        PriceList list = file.list().under(new PriceList.Heading(heading.place(), today, heading.invented()));
        boolean isNew = file.version().filter(version -> version.content().isEmpty()).isPresent();
        return isNew ? PriceFile.fresh(list) : file.with(list);
    }
}
