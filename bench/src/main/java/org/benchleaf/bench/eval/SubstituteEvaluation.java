package org.benchleaf.bench.eval;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.PublishedAdvice;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.shared.measure.YearWeek;

/// Holds substitutes against published lists of what to plant instead, and withholds each cultivar that has a
/// close sister to see whether the sister is found.
public final class SubstituteEvaluation {
    private final Benchleaf benchleaf;
    private final SubstituteFinder finder;
    /// The same, knowing no published lists.
    private final SubstituteFinder facts;

    private final PrintStream out;
    private final List<PlantRecord> plants = new ArrayList<>();
    private final PlantNames names = new PlantNames();
    private final Stocked stocked;
    /// Of the table that is being written.
    private final List<Double> recalls = new ArrayList<>();

    private final List<Double> byFacts = new ArrayList<>();

    private SubstituteEvaluation(Benchleaf benchleaf, PrintStream out) {
        this.benchleaf = benchleaf;
        this.finder = benchleaf.substitutes();
        this.facts = finder.knowing(PublishedAdvice.of(List.of()));
        this.out = out;
        benchleaf.catalog().forEachPlant(plants::add);
        this.stocked = new Stocked(plants, names, benchleaf);
    }

    /// @param taxa a table of landscape taxa, when there is one
    public static void run(Optional<Path> taxa, PrintStream out) throws IOException {
        try (Benchleaf benchleaf = Evaluation.open(taxa)) {
            new SubstituteEvaluation(benchleaf, out).write(taxa.isPresent());
        }
    }

    private void write(boolean withTaxa) {
        checkThatNobodyChecksHimself();
        out.println("# Substitutes against published lists");
        out.println();
        out.println("Made by `bench/run evaluate-substitutes" + (withTaxa ? " TAXA.csv" : "")
                + "`, over the demo nursery" + (withTaxa ? " and a table of landscape taxa" : "") + ": " + plants.size()
                + " plants. Asked without a purpose, a site or a size; in stock now. *Stocked*: taxa of the published"
                + " lists that the nursery has in stock. *Recall@10*: of these, how many are among the first ten"
                + " proposals, of at most ten; *by facts*: when the program knows no published lists. A row that names a"
                + " genus is found by any of its species. Lists, publishers and addresses: `alternatives.csv` and"
                + " `alternatives-sources.csv` beside the bench; rows from memory are left out. None of these pages is"
                + " among the lists that come with the program. A list is not complete: a proposal that no list names"
                + " may serve as well, so this is a lower bound.");
        out.println();
        heading();
        Map<String, List<String>> lists = new LinkedHashMap<>();
        for (Map<String, String> row : Table.read("alternatives.csv")) {
            if (Cells.of(row, "status").equals("seen")) {
                lists.computeIfAbsent(Cells.of(row, "target"), fresh -> new ArrayList<>())
                        .add(Cells.of(row, "replacement"));
            }
        }
        lists.forEach(this::target);
        mean();
        fromMemory();
        out.println();
        out.println("## A list of the program withheld");
        out.println();
        out.println(
                "Each list that comes with the program and names two or more taxa that the nursery has, withheld with"
                        + " all others of its publisher: how much of it is among the first ten proposals. Originals with four"
                        + " lists or more are shown.");
        out.println();
        new Withheld(benchleaf, stocked).write(out);
        sisters();
    }

    /// Lists that nobody published, written down before weights and facts were worked on.
    private void fromMemory() {
        out.println();
        out.println("## Lists from memory");
        out.println();
        out.println(
                "No publication stands behind these twenty (`memory-alternatives.csv`): they were written down before"
                        + " weights and facts were worked on, as what advice of this kind usually names. One setting was chosen by"
                        + " them: that the seasons of a plant share straight and not by squares (0.64 and 0.66).");
        out.println();
        heading();
        for (Map<String, String> row : Table.read("memory-alternatives.csv")) {
            target(Cells.of(row, "target"), Arrays.asList(Cells.of(row, "taxa").split("; ")));
        }
        mean();
    }

    /// Ends a table.
    private void mean() {
        out.println("| mean | | | " + PublishedList.two(Withheld.mean(recalls)) + " | "
                + PublishedList.two(Withheld.mean(byFacts)) + " | |");
        recalls.clear();
        byFacts.clear();
    }

    private void heading() {
        out.println(
                "| instead of | stocked | found in 10 | recall@10 | by facts | proposed, those on a list in bold |");
        out.println("|---|---|---|---|---|---|");
    }

    private void target(String target, List<String> replacements) {
        Optional<PublishedList> known = PublishedList.of(target, replacements, stocked, benchleaf);
        if (known.isEmpty()) {
            out.println("| " + target + " | | | | | not known to the program |");
            return;
        }
        PublishedList list = known.get();
        YearWeek now = YearWeek.of(benchleaf.today());
        List<PlantRecord> proposed = list.proposed(finder, now);
        double recall = list.recall(proposed, names);
        double alone = list.recall(list.proposed(facts, now), names);
        recalls.add(recall);
        byFacts.add(alone);
        String listed = proposed.stream()
                .map(plant -> list.stocked().stream().anyMatch(taxon -> taxon.holds(plant, names))
                        ? "**" + plant.name() + "**"
                        : plant.name().toString())
                .collect(Collectors.joining(", "));
        out.println(String.join(
                " | ",
                "| " + target,
                Integer.toString(list.stocked().size()),
                Integer.toString(list.found(proposed, names)),
                PublishedList.two(recall),
                PublishedList.two(alone),
                listed + " |"));
    }

    /// A list that advises is no check.
    private static void checkThatNobodyChecksHimself() {
        Set<String> checks = Table.read("alternatives-sources.csv").stream()
                .map(row -> Cells.of(row, "address"))
                .collect(Collectors.toSet());
        PublishedAdvice.builtIn().all().stream()
                .map(row -> row.list().address())
                .filter(checks::contains)
                .findFirst()
                .ifPresent(address -> {
                    throw new IllegalStateException("a list that the program knows is also a check: " + address);
                });
    }

    private void sisters() {
        int asked = 0;
        int found = 0;
        List<String> misses = new ArrayList<>();
        for (PlantRecord plant : plants) {
            List<PlantRecord> sisters = plants.stream()
                    .filter(other -> Sisters.areClose(plant, other))
                    .toList();
            if (!sisters.isEmpty()) {
                asked++;
                List<PlantRecord> proposed =
                        PublishedList.proposed(finder, plant, false, Demand.NONE, YearWeek.of(benchleaf.today()), 3);
                if (proposed.stream().anyMatch(sisters::contains)) {
                    found++;
                } else {
                    misses.add("- " + plant.name() + ": proposed "
                            + proposed.stream()
                                    .map(one -> one.name().toString())
                                    .collect(Collectors.joining(", "))
                            + "; sister " + sisters.getFirst().name());
                }
            }
        }
        out.println();
        out.println("## A cultivar withheld, its close sister found");
        out.println();
        out.println(String.format(
                Locale.ROOT,
                "Close sisters: cultivars of one species (of one genus, where no species is named) of the same kind,"
                        + " foliage and habit, heights within a third, with one family of color in common in what each"
                        + " shows. Of %d cultivars with a close sister, one of the sisters is among the first three"
                        + " proposals for %d: %.1f %%.",
                asked,
                found,
                asked == 0 ? 0 : 100.0 * found / asked));
        if (!misses.isEmpty()) {
            out.println();
            misses.forEach(out::println);
        }
    }
}
