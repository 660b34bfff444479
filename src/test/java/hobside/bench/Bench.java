package hobside.bench;

import java.io.IOException;
import java.util.Arrays;

/**
 * Runs one of the measurements. {@code start} and {@code keys} need the built jar and launcher in target, {@code bring} for its
 * starts; {@code ledger}, {@code words}, {@code late}, {@code order}, {@code workshop}, {@code rubric}, {@code advice} and {@code accuracy FOLDER} need nothing but the classes.
 */
public final class Bench {
    private Bench() {}

    public static void main(String[] args) throws IOException {
        String which = args.length == 0 ? "" : args[0];
        String[] rest = Arrays.copyOfRange(args, Math.min(1, args.length), args.length);
        switch (which) {
            case "start" -> StartBench.main(rest);
            case "keys" -> KeyBench.main(rest);
            case "ledger" -> LedgerBench.main(rest);
            case "bring" -> BringBench.main(rest);
            case "accuracy" -> AccuracyBench.main(rest);
            case "search" -> SearchBench.main(rest);
            case "words" -> WordsBench.main(rest);
            case "advice" -> AdviceBench.main(rest);
            case "talk" -> TalkBench.main(rest);
            case "late" -> LateBench.main(rest);
            case "rubric" -> RubricBench.main(rest);
            case "workshop" -> WorkshopBench.main(rest);
            case "harm" -> HarmBench.main(rest);
            case "live" -> LiveBench.main(rest);
            case "lost" -> LostBench.main(rest);
            case "stray" -> StrayBench.main(rest);
            case "whatif" -> WhatIfBench.main(rest);
            case "order" -> OrderBench.main(rest);
            default -> throw new IllegalArgumentException("expected start, keys, ledger, bring, search, words, talk, order, late, live, lost, stray, harm, workshop, rubric, whatif, advice or accuracy, found \"" + which + "\"");
        }
    }
}
