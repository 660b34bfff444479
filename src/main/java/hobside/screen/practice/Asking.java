package hobside.screen.practice;

import hobside.file.Practices;
import hobside.practice.Attempt;
import hobside.practice.Exercise;
import hobside.practice.ReportSheet;
import hobside.practice.Task;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.desk.Work;

/** An exercise put to a trainee, and why it is this one (the key of the sentence). */
record Asking(Room room, String trainee, Exercise exercise, String reason) {

    /** The screen that fits what is to be done. */
    Screen screen() {
        if (exercise.task() instanceof Task.Choose) {
            return new ChooseScreen(this, 0);
        }
        if (exercise.task() instanceof Task.Arrange arrange) {
            return new ArrangeScreen(this, arrange.rows(), new ArrangeScreen.Hand(0, false));
        }
        return exercise.task() instanceof Task.Spot ? new SpotScreen(this, new SpotScreen.Spot(0, -1))
                : WriteScreen.of(this);
    }

    /** "guess: trimming, level 2". */
    String named() {
        return ReportSheet.card(exercise.label().card(), room.syllabus().with().words()) + " · level " + exercise.label().level();
    }

    /** Logs how it went and goes on with what is said back. */
    Next done(Attempt.Result result, Screen after) {
        return Next.doing(after, new Work.Done(trainee, new Practices.Done(exercise.label(), result)));
    }

    Asking in(Room other) {
        return new Asking(other, trainee, exercise, reason);
    }
}
