package org.benchleaf.bench.eval;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;

/// Writes how far the answers agree with published lists, and why where they do not.
final class Report {
    private final Asking asking;
    private final PrintStream out;
    private final List<Map<String, String>> lists = Table.read("need-lists.csv");
    private final List<Taxon> pool = taxa(row -> true);

    Report(Benchleaf benchleaf, PrintStream out) {
        this.asking = new Asking(benchleaf);
        this.out = out;
    }

    void write(boolean withTaxa) {
        out.println("# The search against published plant lists");
        out.println();
        out.println("Made by `bench/run evaluate" + (withTaxa ? " TAXA.csv" : "") + "`, over the demo nursery"
                + (withTaxa ? " and a table of 175 landscape taxa" : "") + ": "
                + asking.plants().size()
                + " plants. A species counts once. *Present*: taxa of the list that the catalog has. *P@10 of taxa named"
                + " anywhere*: of the first ten species that any of the lists names, how many this list names; a plant that"
                + " no list names is not judged. *P@10 of all*: the same over all plants; a plant that is not on a list may"
                + " serve as well, so this is a lower bound. Both are of at most as many as are present. *Recall*: taxa of"
                + " the list that are known to meet every wish. Lists, publishers and addresses: the files beside the"
                + " bench, `SOURCES.md`.");
        out.println();
        out.println("| list | asked | present | P@10 of taxa named anywhere | P@10 of all | recall |");
        out.println("|---|---|---|---|---|---|");
        List<String> misses = new ArrayList<>();
        for (Map<String, String> row : Table.read("evaluation-needs.csv")) {
            if (Cells.of(row, "kind").equals("open")) {
                open(Cells.of(row, "list_id"), Cells.of(row, "need"), misses);
            }
        }
        rated();
        negative();
        bloom();
        deer();
        out.println();
        out.println("## Misses");
        out.println();
        out.println("Taxa of a list that are not known to meet every wish: what the catalog says against it (the source"
                + " disagrees), or does not know (a gap in the data).");
        out.println();
        misses.forEach(out::println);
        new FactsReport(asking, out).write();
    }

    private void open(String list, String need, List<String> misses) {
        List<Taxon> gold = taxa(row -> Cells.of(row, "list_id").equals(list));
        List<Taxon> present = gold.stream().filter(asking::has).toList();
        Asking.Ranked ranked = asking.ask(need);
        int named = asking.species(plant -> any(present, plant)).size();
        double pooled = precision(ranked.species(plant -> any(pool, plant)), present, named);
        double all = precision(ranked.species(plant -> true), present, named);
        long met = present.stream().filter(ranked::meets).count();
        out.printf(
                Locale.ROOT,
                "| %s | %s | %d of %d | %.2f | %.2f | %.2f |%n",
                list,
                need,
                present.size(),
                gold.size(),
                pooled,
                all,
                present.isEmpty() ? 0 : (double) met / present.size());
        System.err.println(list + " " + need);
        ranked.species(plant -> true).stream()
                .limit(16)
                .forEach(plant -> System.err.println((any(gold, plant) ? "  + " : any(pool, plant) ? "  - " : "    ")
                        + plant.name() + "  | " + plant.facts().value(Attributes.EXPOSURE)
                        + plant.facts().value(Attributes.MOISTURE)));
        misses.add("- **" + list + "** " + need + ". Not in the catalog: "
                + none(gold.stream()
                        .filter(taxon -> !asking.has(taxon))
                        .map(Taxon::text)
                        .toList()) + ".");
        present.stream()
                .filter(taxon -> !ranked.meets(taxon))
                .forEach(taxon -> misses.add("  - " + taxon.text() + ": " + ranked.against(taxon)));
    }

    /// Trees rated 1 (least injured) to 5: 2 and better count as right.
    private void rated() {
        String need = "deciduous trees tolerant of salt spray";
        List<Taxon> good = taxa(row -> Cells.of(row, "list_id").equals("N18") && rating(row) <= 2);
        List<Taxon> all = taxa(row -> Cells.of(row, "list_id").equals("N18"));
        graded("N18", need, good, all);
    }

    private static double rating(Map<String, String> row) {
        return Cells.of(row, "note").isEmpty() ? 5 : Cells.of(row, "note").charAt(0) - '0';
    }

    private void negative() {
        String need = "tolerant of black walnut";
        Asking.Ranked ranked = asking.ask(need);
        List<Taxon> sensitive = taxa(row -> Cells.of(row, "list_id").equals("N30")).stream()
                .filter(asking::has)
                .toList();
        List<String> proposed =
                sensitive.stream().filter(ranked::meets).map(Taxon::text).toList();
        out.printf(
                "| N30 | %s; the list names what must not be said to bear it | %d | – | – | said to bear it: %s |%n",
                need, sensitive.size(), none(proposed));
    }

    private void bloom() {
        String[] months = {
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December"
        };
        List<Map<String, String>> rows = Table.read("bloom-months.csv");
        List<Taxon> all = rows.stream()
                .flatMap(row -> Taxon.of(Cells.of(row, "genus")).stream())
                .toList();
        for (int month = 4; month <= 9; month++) {
            int asked = month;
            List<Taxon> good = rows.stream()
                    .filter(row ->
                            number(Cells.of(row, "from_month")) <= asked && asked <= number(Cells.of(row, "to_month")))
                    .flatMap(row -> Taxon.of(Cells.of(row, "genus")).stream())
                    .toList();
            graded("bloom", "perennials flowering in " + months[month - 1], good, all);
        }
    }

    private static int number(String month) {
        return "JanFebMarAprMayJunJulAugSepOctNovDec".indexOf(month) / 3 + 1;
    }

    private void deer() {
        List<Map<String, String>> rows = Table.read("deer-ratings.csv");
        List<Taxon> all = rows.stream()
                .flatMap(row -> Taxon.of(Cells.of(row, "taxon")).stream())
                .toList();
        List<Taxon> good = rows.stream()
                .filter(row -> Cells.of(row, "rating").equals("A")
                        || Cells.of(row, "rating").equals("B"))
                .flatMap(row -> Taxon.of(Cells.of(row, "taxon")).stream())
                .toList();
        for (String need : List.of(
                "deer resistant",
                "deer resistant shrubs for shade",
                "deer resistant perennials",
                "deer resistant trees")) {
            graded("deer", need, good, all);
        }
    }

    /// Lists that name both what serves and what does not: the first ten species of which the list says anything.
    private void graded(String list, String need, List<Taxon> good, List<Taxon> all) {
        Asking.Ranked ranked = asking.ask(need);
        List<PlantRecord> first =
                ranked.species(plant -> any(all, plant)).stream().limit(10).toList();
        List<PlantRecord> wrong =
                first.stream().filter(plant -> !any(good, plant)).toList();
        long present = good.stream().filter(asking::has).count();
        long met = good.stream().filter(asking::has).filter(ranked::meets).count();
        out.printf(
                Locale.ROOT,
                "| %s (rated) | %s | %d | %.2f%s | – | %.2f |%n",
                list,
                need,
                present,
                first.isEmpty() ? 0 : 1 - (double) wrong.size() / first.size(),
                wrong.isEmpty()
                        ? ""
                        : " (not: "
                                + String.join(
                                        ", ",
                                        wrong.stream().map(Taxon::speciesOf).toList()) + ")",
                present == 0 ? 0 : (double) met / present);
    }

    private double precision(List<PlantRecord> ranked, List<Taxon> gold, int named) {
        int most = Math.min(10, named);
        return most == 0
                ? 0
                : (double) ranked.stream()
                                .limit(most)
                                .filter(plant -> any(gold, plant))
                                .count()
                        / most;
    }

    private List<Taxon> taxa(Predicate<Map<String, String>> wanted) {
        return lists.stream()
                .filter(wanted)
                .flatMap(row -> Taxon.of(Cells.of(row, "taxon")).stream())
                .toList();
    }

    private boolean any(List<Taxon> taxa, PlantRecord plant) {
        return taxa.stream().anyMatch(taxon -> asking.holds(taxon, plant));
    }

    private static String none(List<String> texts) {
        return texts.isEmpty() ? "none" : String.join(", ", texts);
    }
}
