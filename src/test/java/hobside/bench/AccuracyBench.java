package hobside.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Measures how near the predictions come to published figures: trimming, cooking and whole recipes.
 *
 * <p>Argument: a folder with the tables trim-pairs.csv, raw-cooked-pairs.csv, composition.csv and recipe-cases.json. A row that
 * cannot be used is counted and said.
 */
public final class AccuracyBench {

    private AccuracyBench() {}

    public static void main(String[] args) throws IOException {
        if (args.length != 1 || !Files.isDirectory(Path.of(args[0]))) {
            throw new IllegalArgumentException("expected the folder of the published tables");
        }
        Path folder = Path.of(args[0]);
        TrimAccuracy.print(folder);
        CookingAccuracy.print(folder);
        RecipeAccuracy.print(folder);
    }
}
