package hobside.bench;

import hobside.Bundle;
import hobside.Finished;
import hobside.screen.Frame;
import hobside.screen.Key;
import hobside.screen.Message;
import hobside.screen.Next;
import hobside.screen.Screen;
import hobside.screen.asked.AskedScreen;
import hobside.screen.asked.MissingScreen;
import hobside.screen.asked.WhatIfScreen;
import hobside.screen.bench.Bench;
import hobside.screen.desk.Desk;
import hobside.talk.Demo;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * How long it takes from a key to the drawn frame (80 x 24) while somebody is asked "what if": random keys through the ways, amounts
 * and layers of the three finished demos, 300 results each. Target 16 ms. And a key of a question being typed: target 5 ms.
 */
final class WhatIfBench {

    private static final int RESULTS = 300;
    private static final List<String> KEYS = List.of("down", "down", "down", "down", "up", "tab", "2", "5", "a", "escape", "enter");

    private WhatIfBench() {}

    public static void main(String[] args) {
        List<Double> all = new ArrayList<>();
        for (int run = 0; run < 3; run++) {
            all.clear();
            for (String name : Finished.NAMES) {
                all.addAll(times(name, run));
            }
        }
        print("a what-if, key to frame", all);
        List<Double> missing = new ArrayList<>();
        List<Double> asked = new ArrayList<>();
        for (int run = 0; run < 3; run++) {
            missing.clear();
            asked.clear();
            for (String name : Finished.NAMES) {
                missing(name, missing);
                asked(name, asked);
            }
        }
        print("what can be done about something missing", missing);
        print("a key of a question", asked);
    }

    private static Bench bench(String name) {
        return Bench.of(Desk.of(Bundle.STUDY, Finished.demo(name), Desk.Kept.NOT_YET), "");
    }

    private static List<Double> times(String name, int seed) {
        Random random = new Random(seed);
        Bench bench = bench(name);
        Screen start = WhatIfScreen.of(bench, bench, (Demo changed, String said) -> Next.to(bench));
        Screen screen = start;
        List<Double> times = new ArrayList<>();
        while (times.size() < RESULTS) {
            boolean over = !(screen instanceof WhatIfScreen) || random.nextInt(25) == 0;
            screen = over ? ingredient(start, random) : screen;
            long began = System.nanoTime();
            Screen next = pressed(screen, KEYS.get(random.nextInt(KEYS.size())));
            next.view(new Frame(80, 24));
            double millis = (System.nanoTime() - began) / 1e6;
            if (isNewResult(screen, next)) {
                times.add(millis);
            }
            screen = next;
        }
        return times;
    }

    /** Keys that only move or go back are quick and would make the figures look better than they are. */
    private static boolean isNewResult(Screen before, Screen after) {
        return before instanceof WhatIfScreen one && after instanceof WhatIfScreen other && !other.trial().laid().isEmpty()
                && !one.trial().laid().equals(other.trial().laid());
    }

    private static Screen ingredient(Screen start, Random random) {
        Screen screen = start;
        for (int i = random.nextInt(12); i > 0; i--) {
            screen = pressed(screen, "down");
        }
        return pressed(screen, "enter");
    }

    private static Screen pressed(Screen screen, String key) {
        return screen.update(new Message.KeyPressed(Key.parse(key))).screen().orElseThrow();
    }

    private static void missing(String name, List<Double> times) {
        Bench bench = bench(name);
        Screen screen = MissingScreen.of(bench, bench, (Demo changed, String said) -> Next.to(bench));
        for (int i = 0; i < 11; i++) {
            times.add(timed(screen, "enter"));
            screen = pressed(screen, "down");
        }
    }

    private static void asked(String name, List<Double> times) {
        Bench bench = bench(name);
        Screen screen = AskedScreen.of(bench, bench, (String question, boolean answered) -> Next.to(bench));
        for (char letter : "can i keep the dripping for tomorow and fry the potatos with it, or is that not good for my hart".toCharArray()) {
            String key = letter == ' ' ? "space" : String.valueOf(letter);
            times.add(timed(screen, key));
            screen = pressed(screen, key);
        }
    }

    private static double timed(Screen screen, String key) {
        long began = System.nanoTime();
        pressed(screen, key).view(new Frame(80, 24));
        return (System.nanoTime() - began) / 1e6;
    }

    private static void print(String what, List<Double> millis) {
        Samples samples = Samples.of(millis.stream().mapToDouble(Double::doubleValue).toArray());
        System.out.printf(Locale.ROOT, "%-42s %4d times: median %.2f ms, p99 %.2f ms, most %.2f ms%n", what, millis.size(), samples.median(),
                samples.percentile(99), samples.percentile(100));
    }
}
