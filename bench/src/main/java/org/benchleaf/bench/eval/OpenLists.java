package org.benchleaf.bench.eval;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.PlantRecord;

/// Lists that name some plants that serve and are silent about the others.
final class OpenLists {
    private static final int FIRST = 10;

    private final Asking asking;
    private final SecondSource second;
    private final List<Map<String, String>> rows;
    private final PrintStream out;
    private final List<Taxon> pool;
    private final List<String> firsts = new ArrayList<>();
    private final List<String> misses = new ArrayList<>();

    OpenLists(Asking asking, SecondSource second, List<Map<String, String>> rows, PrintStream out) {
        this.asking = asking;
        this.second = second;
        this.rows = rows;
        this.out = out;
        this.pool = rows.stream()
                .flatMap(row -> Taxon.of(Cells.of(row, "taxon")).stream())
                .toList();
    }

    void write() {
        heading();
        for (Map<String, String> row : Table.read("evaluation-needs.csv")) {
            if (Cells.of(row, "kind").equals("open")) {
                write(Cells.of(row, "list_id"), Cells.of(row, "need"), Cells.of(row, "second"));
            }
        }
    }

    /// The needs of lists that nobody published, written from memory.
    void writeFromMemory() {
        heading();
        for (Map<String, String> row : Table.read("memory-lists.csv")) {
            write(Cells.of(row, "list_id"), Cells.of(row, "need"), "");
        }
    }

    /// The rows of the lists from memory, a taxon a row as in the published ones.
    static List<Map<String, String>> fromMemory() {
        return Table.read("memory-lists.csv").stream()
                .flatMap(row -> Arrays.stream(Cells.of(row, "taxa").split("; "))
                        .map(taxon -> Map.of("list_id", Cells.of(row, "list_id"), "taxon", taxon)))
                .toList();
    }

    private void heading() {
        out.println("| list | asked | present | P@10 | of taxa named anywhere | of all | recall |");
        out.println("|---|---|---|---|---|---|---|");
    }

    private void write(String list, String need, String check) {
        List<Taxon> gold = rows.stream()
                .filter(row -> Cells.of(row, "list_id").equals(list))
                .flatMap(row -> Taxon.of(Cells.of(row, "taxon")).stream())
                .toList();
        List<Taxon> present = gold.stream().filter(asking::has).toList();
        Asking.Ranked ranked = asking.ask(need);
        List<PlantRecord> species = ranked.species(plant -> true);
        int most = Math.min(
                FIRST, asking.species(plant -> asking.any(present, plant)).size());
        long met = present.stream().filter(ranked::meets).count();
        out.printf(
                Locale.ROOT,
                "| %s | %s | %d of %d | %s | %.2f | %.2f | %.2f |%n",
                list,
                need,
                present.size(),
                gold.size(),
                judged(species, gold, check),
                precision(ranked.species(plant -> asking.any(pool, plant)), present, most),
                precision(species, present, most),
                present.isEmpty() ? 0 : (double) met / present.size());
        firsts.add("- **" + list + "** "
                + species.stream()
                        .limit(FIRST)
                        .map(plant -> Taxon.speciesOf(plant) + " (" + who(plant, gold, check) + ")")
                        .collect(Collectors.joining(", ")));
        misses.add("- **" + list + "** " + need + ". Not in the catalog: "
                + none(gold.stream()
                        .filter(taxon -> !asking.has(taxon))
                        .map(Taxon::text)
                        .toList()) + ".");
        present.stream()
                .filter(taxon -> !ranked.meets(taxon))
                .forEach(taxon -> misses.add("  - " + taxon.text() + ": " + ranked.against(taxon)));
    }

    /// Of the first ten of which anybody says anything, how many serve.
    private String judged(List<PlantRecord> species, List<Taxon> gold, String check) {
        List<Boolean> verdicts = species.stream()
                .flatMap(plant -> verdict(plant, gold, check).stream())
                .limit(FIRST)
                .toList();
        long right = verdicts.stream().filter(serves -> serves).count();
        return check.isEmpty() || verdicts.isEmpty()
                ? "–"
                : String.format(Locale.ROOT, "%.2f", (double) right / verdicts.size());
    }

    private Optional<Boolean> verdict(PlantRecord plant, List<Taxon> gold, String check) {
        return asking.any(gold, plant) ? Optional.of(true) : asking.says(second, check, plant);
    }

    private String who(PlantRecord plant, List<Taxon> gold, String check) {
        return asking.any(gold, plant)
                ? "list"
                : asking.says(second, check, plant)
                        .map(serves -> serves ? "USDA" : "USDA: no")
                        .orElse("–");
    }

    void writeFirstTen() {
        out.println("## The first ten of each list");
        out.println();
        out.println("Who says that it serves: the list itself, USDA PLANTS, or nobody that was asked (–).");
        out.println();
        firsts.forEach(out::println);
        out.println();
    }

    void writeMisses() {
        out.println("## Misses");
        out.println();
        out.println("Taxa of a list that are not known to meet every wish: what the catalog says against it (the source"
                + " disagrees), or does not know (a gap in the data).");
        out.println();
        misses.forEach(out::println);
    }

    private double precision(List<PlantRecord> ranked, List<Taxon> gold, int most) {
        return most == 0
                ? 0
                : (double) ranked.stream()
                                .limit(most)
                                .filter(plant -> asking.any(gold, plant))
                                .count()
                        / most;
    }

    private static String none(List<String> texts) {
        return texts.isEmpty() ? "none" : String.join(", ", texts);
    }
}
