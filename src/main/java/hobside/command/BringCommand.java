package hobside.command;

import hobside.file.Kitchen;
import hobside.file.Library;
import hobside.file.Read;
import hobside.file.Saving;
import hobside.file.bring.Bring;
import hobside.file.bring.Review;
import hobside.file.bring.Taking;
import hobside.measure.Worded;
import java.util.Optional;

/** Shows what a table, a recipe or a folder of tables holds, and with --yes takes it into the kitchen. */
final class BringCommand {

    private final Kitchen kitchen;
    private final Commands.Streams streams;
    private final Given given;

    BringCommand(Kitchen kitchen, Commands.Streams streams, Given given) {
        this.kitchen = kitchen;
        this.streams = streams;
        this.given = given;
    }

    Exit run() {
        Optional<Bring.Kind> kind = given.as().flatMap(Bring.Kind::parse);
        if (given.rest().size() != 1 || given.as().isPresent() && kind.isEmpty()) {
            streams.complain("bring needs the name of one file or folder, such as: hobside bring my-table.csv; --as takes one of "
                    + String.join(", ", Worded.words(Bring.Kind.values())) + ".");
            return Exit.BAD_INPUT;
        }
        Library library = Library.load(kitchen);
        library.problems().forEach(problem -> streams.complain(problem.written()));
        Read<Review> read = new Bring(kitchen, library).review(given.rest().get(0), kind);
        read.problems().forEach(problem -> streams.complain(problem.written()));
        return read.value().map(review -> answered(review, library)).orElse(Exit.BAD_INPUT);
    }

    private Exit answered(Review review, Library library) {
        streams.say(ReviewText.of(review));
        if (review.isEmpty()) {
            return Exit.NO_ANSWER;
        }
        if (!given.has(Given.YES)) {
            streams.say("Nothing is written yet. To take it: the same command with --yes.\n");
            return Exit.DONE;
        }
        Saving saving = new Taking(kitchen, library.shelf()).take(review);
        if (saving instanceof Saving.NotSaved) {
            streams.complain(saving.said());
            return Exit.BAD_INPUT;
        }
        streams.say(saving.said() + "\n");
        return Exit.DONE;
    }
}
