package hobside.file.bring;

import hobside.Bundle;
import hobside.file.Harm;
import hobside.file.InputProblem;
import hobside.file.RawFile;
import hobside.file.Read;
import hobside.measure.SpoonSet;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** All importers of single files, to be tried with mutants of the files that are kept for their tests. */
public final class Importers {

    private Importers() {}

    public static Harm with(Harm harm) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of("src/test/resources/hobside/file/bring/bad"))) {
            for (Path file : files) {
                String name = file.getFileName().toString();
                if (name.endsWith(".csv")) {
                    harm.and(file, Importers::foods).and(file, Importers::prices);
                } else if (name.endsWith(".json")) {
                    harm.and(file, Importers::recipe);
                }
            }
        }
        return harm;
    }

    private static List<String> foods(byte[] mutant) throws IOException {
        return told(FoodTable.review(Input.of(new RawFile("m.csv", mutant)), Bundle.STUDY.shelf(), "m"));
    }

    private static List<String> prices(byte[] mutant) throws IOException {
        return told(PriceTable.review(Input.of(new RawFile("m.csv", mutant)), Bundle.STUDY.shelf(), Bundle.STUDY.books().prices().currency(), "m"));
    }

    private static List<String> recipe(byte[] mutant) {
        return told(RecipeReader.review(new RawFile("m.json", mutant), Bundle.STUDY.shelf(), SpoonSet.METRIC, "m"));
    }

    private static List<String> told(Read<Review> read) {
        List<String> told = new ArrayList<>();
        read.problems().forEach(problem -> told.add(problem.written()));
        read.value().ifPresent(review -> {
            told.addAll(review.told());
            review.noted().forEach(noted -> told.add(noted.written()));
            review.faults().stream().map(InputProblem::written).forEach(told::add);
        });
        return told;
    }
}
