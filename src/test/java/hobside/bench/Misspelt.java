package hobside.bench;

import hobside.Bundle;
import hobside.dish.Names;
import hobside.food.Food;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Queries that people get wrong: a hundred by hand, and as many as wanted by rule from the names of the shelf, drawn by a seed. */
public final class Misspelt {

    private static final String NEIGHBOURS = "qwertyuiop asdfghjkl zxcvbnm";
    private static final String VOWELS = "aeiou";

    /** What is typed, and the ids of the foods that are right, any one of them. */
    public record Query(String typed, List<String> right) {

        /** Whether a right food is among the first five. */
        public boolean isFound() {
            return Bundle.STUDY.shelf().find(typed, 5).stream().map(Food::id).anyMatch(right::contains);
        }
    }

    private Misspelt() {}

    public static List<Query> byHand() throws IOException {
        List<Query> queries = new ArrayList<>();
        try (InputStream in = Misspelt.class.getResourceAsStream("misspelt.csv")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (!line.startsWith("#")) {
                    String[] parts = line.split(",");
                    queries.add(new Query(parts[0], List.of(parts[1].split("\\|"))));
                }
            }
        }
        return queries;
    }

    /** Names up to their first comma with one slip in one word of at least five letters; right is every food of that name. */
    public static List<Query> byRule(int many, long seed) {
        Random random = new Random(seed);
        List<Food> foods = Bundle.STUDY.shelf().foods();
        List<Query> queries = new ArrayList<>();
        while (queries.size() < many) {
            String name = Names.brief(foods.get(random.nextInt(foods.size())).name());
            String[] words = name.split(" ");
            int at = random.nextInt(words.length);
            if (words[at].length() >= 5) {
                words[at] = slipped(words[at], random);
                List<String> right = foods.stream().filter(food -> Names.brief(food.name()).equals(name)).map(Food::id).toList();
                queries.add(new Query(String.join(" ", words), right));
            }
        }
        return queries;
    }

    private static String slipped(String word, Random random) {
        int at = 1 + random.nextInt(word.length() - 2);
        String before = word.substring(0, at);
        char letter = word.charAt(at);
        String after = word.substring(at + 1);
        return switch (random.nextInt(5)) {
            case 0 -> before + after;
            case 1 -> before + letter + letter + after;
            case 2 -> before + after.charAt(0) + letter + after.substring(1);
            case 3 -> before + VOWELS.charAt(random.nextInt(VOWELS.length())) + after;
            default -> before + neighbour(letter) + after;
        };
    }

    private static char neighbour(char letter) {
        int at = NEIGHBOURS.indexOf(letter);
        boolean hasNext = at >= 0 && at + 1 < NEIGHBOURS.length() && NEIGHBOURS.charAt(at + 1) != ' ';
        return hasNext ? NEIGHBOURS.charAt(at + 1) : 'e';
    }
}
