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
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.OriginalFinder;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.Purpose;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.search.substitute.SubstituteAnswer;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// Holds substitutes against published lists of what to plant instead, and withholds each cultivar that has a
/// close sister to see whether the sister is found.
public final class SubstituteEvaluation {
    private static final int AT = 10;

    private final Benchleaf benchleaf;
    private final SubstituteFinder finder;
    private final PrintStream out;
    private final List<PlantRecord> plants = new ArrayList<>();
    private final PlantNames names = new PlantNames();
    /// Of the table that is being written.
    private final List<Double> recalls = new ArrayList<>();

    private SubstituteEvaluation(Benchleaf benchleaf, PrintStream out) {
        this.benchleaf = benchleaf;
        this.finder = benchleaf.substitutes();
        this.out = out;
        benchleaf.catalog().forEachPlant(plants::add);
    }

    /// @param taxa a table of landscape taxa, when there is one
    public static void run(Optional<Path> taxa, PrintStream out) throws IOException {
        try (Benchleaf benchleaf = Evaluation.open(taxa)) {
            new SubstituteEvaluation(benchleaf, out).write(taxa.isPresent());
        }
    }

    private void write(boolean withTaxa) {
        out.println("# Substitutes against published lists");
        out.println();
        out.println("Made by `bench/run evaluate-substitutes" + (withTaxa ? " TAXA.csv" : "")
                + "`, over the demo nursery" + (withTaxa ? " and a table of landscape taxa" : "") + ": " + plants.size()
                + " plants. Asked without a purpose, a site or a size; in stock now. *Stocked*: taxa of the published"
                + " list that the nursery has in stock. *Recall@10*: of these, how many are among the first ten"
                + " proposals, of at most ten. A row that names a genus is found by any of its species. Lists, publishers"
                + " and addresses: `alternatives.csv` and `alternatives-sources.csv` beside the bench; rows from memory"
                + " are left out. A list is not complete: a proposal that no list names may serve as well, so this is a"
                + " lower bound.");
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
        out.println(String.format(
                Locale.ROOT,
                "| mean | | | %.2f | |",
                recalls.stream().mapToDouble(Double::doubleValue).average().orElse(0)));
        recalls.clear();
    }

    private void heading() {
        out.println("| instead of | stocked | found in 10 | recall@10 | proposed, those on a list in bold |");
        out.println("|---|---|---|---|---|");
    }

    private void target(String target, List<String> replacements) {
        OriginalFinder.Found original;
        try {
            original = benchleaf.originals().find(target);
        } catch (Refusal unknown) {
            out.println("| " + target + " | | | | not known to the program |");
            return;
        }
        List<Taxon> gold = replacements.stream()
                .distinct()
                .flatMap(text -> Taxon.of(text).stream())
                .filter(this::isStocked)
                .toList();
        List<PlantRecord> proposed = best(original.plant(), original.wholeGenus(), Demand.ANY, AT).stream()
                .map(one -> one.match().plant())
                .toList();
        long found = gold.stream()
                .filter(taxon -> proposed.stream().anyMatch(plant -> taxon.holds(plant, names)))
                .count();
        long most = Math.min(AT, gold.size());
        double recall = most == 0 ? 0 : Math.min(1, (double) found / most);
        recalls.add(recall);
        String listed = proposed.stream()
                .map(plant -> gold.stream().anyMatch(taxon -> taxon.holds(plant, names))
                        ? "**" + plant.name() + "**"
                        : plant.name().toString())
                .collect(Collectors.joining(", "));
        out.println(
                String.format(Locale.ROOT, "| %s | %d | %d | %.2f | %s |", target, gold.size(), found, recall, listed));
    }

    private boolean isStocked(Taxon taxon) {
        return plants.stream()
                .filter(plant -> taxon.holds(plant, names))
                .anyMatch(plant -> benchleaf.catalog().stock(List.of(plant.key())).values().stream()
                        .anyMatch(stock -> stock.items().stream()
                                .anyMatch(item -> stock.freeBy(item.key(), YearWeek.of(benchleaf.today())) > 0)));
    }

    private List<Substitute> best(PlantRecord original, boolean wholeGenus, Demand demand, int limit) {
        List<WeighedWish> others = wholeGenus
                ? List.of(WeighedWish.of(new Wish.NotOfGenus(original.name().genus())))
                : List.of();
        SubstituteAnswer answer = finder.find(new SubstituteQuery(
                original, Purpose.NOT_SAID, demand, Optional.empty(), others, YearWeek.of(benchleaf.today()), limit));
        return answer.best();
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
                List<PlantRecord> proposed = best(plant, false, Demand.NONE, 3).stream()
                        .map(one -> one.match().plant())
                        .toList();
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
