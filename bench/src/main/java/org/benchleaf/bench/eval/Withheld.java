package org.benchleaf.bench.eval;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.search.substitute.Advised;
import org.benchleaf.search.substitute.Publication;
import org.benchleaf.search.substitute.PublishedAdvice;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.shared.measure.YearWeek;

/// Withholds each list that comes with the program, with all others of its publisher, and looks how much of it is
/// proposed all the same: what the advice of some is worth where others have not been read.
final class Withheld {
    /// A list of which the nursery has less says little.
    private static final int FEWEST = 2;
    /// Originals with fewer lists are counted and not shown.
    private static final int SHOWN = 4;

    private final Benchleaf benchleaf;
    private final Stocked stocked;
    private final PublishedAdvice all = PublishedAdvice.builtIn();
    private final SubstituteFinder facts;

    Withheld(Benchleaf benchleaf, Stocked stocked) {
        this.benchleaf = benchleaf;
        this.stocked = stocked;
        this.facts = benchleaf.substitutes().knowing(PublishedAdvice.of(List.of()));
    }

    /// @param byFacts recall by facts alone
    /// @param byOthers recall with the lists of all other publishers
    private record Recall(double byFacts, double byOthers) {}

    void write(PrintStream out) {
        Map<String, List<Recall>> byOriginal = new TreeMap<>();
        Map<Publication, Map<String, List<Advised>>> lists = all.all().stream()
                .collect(Collectors.groupingBy(
                        Advised::list,
                        Collectors.groupingBy(row -> row.original().text())));
        lists.forEach((list, rows) -> {
            SubstituteFinder others =
                    facts.knowing(all.without(row -> row.list().publisher().equals(list.publisher())));
            rows.forEach((original, named) -> PublishedList.of(
                            original,
                            named.stream().map(row -> row.instead().text()).toList(),
                            stocked,
                            benchleaf)
                    .filter(known -> known.stocked().size() >= FEWEST)
                    .ifPresent(known -> byOriginal
                            .computeIfAbsent(original, fresh -> new ArrayList<>())
                            .add(new Recall(recall(known, facts), recall(known, others)))));
        });
        out.println("| instead of | lists | by facts alone | with the others' lists |");
        out.println("|---|---|---|---|");
        byOriginal.entrySet().stream()
                .filter(one -> one.getValue().size() >= SHOWN)
                .sorted(Comparator.comparing(one -> -one.getValue().size()))
                .forEach(one -> row(one.getKey(), one.getValue(), out));
        List<Recall> every = byOriginal.values().stream().flatMap(List::stream).toList();
        row("all " + byOriginal.size() + " originals", every, out);
    }

    private double recall(PublishedList list, SubstituteFinder finder) {
        return list.recall(list.proposed(finder, YearWeek.of(benchleaf.today())), stocked.names());
    }

    private static void row(String of, List<Recall> recalls, PrintStream out) {
        out.println("| " + of + " | " + recalls.size() + " | "
                + PublishedList.two(mean(recalls.stream().map(Recall::byFacts).toList())) + " | "
                + PublishedList.two(mean(recalls.stream().map(Recall::byOthers).toList())) + " |");
    }

    static double mean(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }
}
