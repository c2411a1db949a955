package org.benchleaf.bench.eval;

import java.io.PrintStream;
import java.text.DateFormatSymbols;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.model.PlantRecord;

/// Writes how far the answers agree with published lists, and why where they do not.
final class Report {
    private final Asking asking;
    private final PrintStream out;
    private final List<Map<String, String>> lists = Table.read("need-lists.csv");
    private final OpenLists open;
    private final OpenLists fromMemory;

    Report(Benchleaf benchleaf, SecondSource second, PrintStream out) {
        this.asking = new Asking(benchleaf);
        this.out = out;
        this.open = new OpenLists(asking, second, lists, out);
        List<Map<String, String>> all =
                Stream.concat(lists.stream(), OpenLists.fromMemory().stream()).toList();
        this.fromMemory = new OpenLists(asking, SecondSource.NONE, all, out);
    }

    void write(boolean withTaxa) {
        out.println("# The search against published plant lists");
        out.println();
        out.println("Made by `bench/run evaluate" + (withTaxa ? " TAXA.csv USDA.csv" : "") + "`, over the demo nursery"
                + (withTaxa ? " and a table of 175 landscape taxa" : "") + ": "
                + asking.plants().size() + " plants. A species counts once.");
        out.println();
        open.write();
        rated();
        negative();
        bloom();
        deer();
        out.println();
        open.writeFirstTen();
        open.writeMisses();
        heldOut();
        new FactsReport(asking, out).write();
    }

    /// Lists that were written before anything was tuned, and whose figures were not looked at meanwhile.
    private void heldOut() {
        out.println();
        out.println("## Lists from memory, held out");
        out.println();
        fromMemory.writeFromMemory();
        out.println();
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
        List<Map<String, String>> rows = Table.read("bloom-months.csv");
        List<Taxon> all = rows.stream().flatMap(Report::meant).toList();
        for (int month = 4; month <= 9; month++) {
            for (int apart = 0; apart <= 1; apart++) {
                int asked = month;
                int months = apart;
                List<Taxon> good = rows.stream()
                        .filter(row -> number(Cells.of(row, "from_month")) - months <= asked
                                && asked <= number(Cells.of(row, "to_month")) + months)
                        .flatMap(Report::meant)
                        .toList();
                String list = apart == 0 ? "bloom" : "bloom, a month apart counts";
                graded(list, "perennials flowering in " + months()[month - 1], good, all);
            }
        }
    }

    /// The plants that a row of the table is about: a genus, or the species of a group within it.
    private static Stream<Taxon> meant(Map<String, String> row) {
        return Arrays.stream(Cells.of(row, "meant").split("\\|")).flatMap(name -> Taxon.of(name).stream());
    }

    private static String[] months() {
        return new DateFormatSymbols(Locale.ENGLISH).getMonths();
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

    /// Lists that name both what serves and what does not: the first ten species of which the list says
    /// anything, or fewer where fewer serve.
    private void graded(String list, String need, List<Taxon> good, List<Taxon> all) {
        Asking.Ranked ranked = asking.ask(need);
        int most = Math.min(10, asking.species(plant -> asking.any(good, plant)).size());
        List<PlantRecord> first = ranked.species(plant -> asking.any(all, plant)).stream()
                .limit(most)
                .toList();
        List<PlantRecord> wrong =
                first.stream().filter(plant -> !asking.any(good, plant)).toList();
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

    private List<Taxon> taxa(Predicate<Map<String, String>> wanted) {
        return lists.stream()
                .filter(wanted)
                .flatMap(row -> Taxon.of(Cells.of(row, "taxon")).stream())
                .toList();
    }

    private static String none(List<String> texts) {
        return texts.isEmpty() ? "none" : String.join(", ", texts);
    }
}
