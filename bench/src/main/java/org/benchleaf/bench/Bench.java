package org.benchleaf.bench;

import java.io.IOException;

/// Starts one benchmark.
public final class Bench {
    private Bench() {}

    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 2) {
            throw new IllegalArgumentException("needs N, names N, cards N or labels N");
        }
        int count = Integer.parseInt(arguments[1]);
        switch (arguments[0]) {
            case "needs" -> NeedBench.run(count, System.out);
            case "names" -> NamesBench.run(count, System.out);
            case "cards" -> PrintBench.cards(count, System.out);
            case "labels" -> PrintBench.labels(count, System.out);
            default -> throw new IllegalArgumentException("needs, names, cards or labels; got " + arguments[0]);
        }
    }
}
