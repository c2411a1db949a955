package org.benchleaf.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.benchleaf.bench.eval.Evaluation;
import org.benchleaf.bench.eval.SubstituteEvaluation;

/// Starts one benchmark, or the evaluation against published lists.
public final class Bench {
    private static final String USAGE =
            "needs N, names N, import N, engines N, others N, ledger N, cards N, cards-photos N, cards-browser N, labels N, substitutes N, web N,"
                    + " evaluate [TAXA.csv [USDA.csv]] or evaluate-substitutes [TAXA.csv]";

    private Bench() {}

    public static void main(String[] arguments) throws IOException {
        if (arguments.length >= 1 && arguments[0].equals("evaluate")) {
            Evaluation.run(
                    Arrays.stream(arguments).skip(1).findFirst().map(Path::of),
                    Arrays.stream(arguments).skip(2).findFirst().map(Path::of),
                    System.out);
            return;
        }
        if (arguments.length >= 1 && arguments[0].equals("evaluate-substitutes")) {
            SubstituteEvaluation.run(
                    Arrays.stream(arguments).skip(1).findFirst().map(Path::of), System.out);
            return;
        }
        if (arguments.length != 2) {
            throw new IllegalArgumentException(USAGE);
        }
        int count = Integer.parseInt(arguments[1]);
        switch (arguments[0]) {
            case "needs" -> NeedBench.run(count, System.out);
            case "names" -> NamesBench.run(count, System.out);
            case "substitutes" -> SubstituteBench.run(count, System.out);
            case "web" -> WebBench.run(count, System.out);
            case "import" -> ImportBench.run(count, System.out);
            case "engines" -> EngineBench.run(count, System.out);
            case "ledger" -> LedgerBench.run(count, System.out);
            case "others" -> EngineBench.others(count, System.out);
            case "cards" -> PrintBench.cards(count, System.out);
            case "cards-photos" -> PrintBench.cardsWithPhotographs(count, System.out);
            case "cards-browser" -> BrowserCards.run(count, System.out);
            case "labels" -> PrintBench.labels(count, System.out);
            default -> throw new IllegalArgumentException(USAGE + "; got " + arguments[0]);
        }
    }
}
