package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.app.service.PrintTask;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.catalog.CatalogException;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.StockPaper;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PagePicture;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;

/// How the print desk looks with what was chosen: its lines, the first sheet, what should be put right.
final class PrintView {
    /// So many lines are laid out for the picture; all of them when the file is made.
    private static final int LOOKED_AT = 60;
    private static final int COPIES = 80;
    private static final int WIDTH = 760;

    private final Benchleaf benchleaf;
    private final Wording wording;
    private final PrintOptions options;

    PrintView(Benchleaf benchleaf, PrintOptions options) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
        this.options = options;
    }

    /// One line of the list.
    ///
    /// @param chosen the value of its choice of sizes
    public record Row(
            String name, String common, String path, List<PrintOptions.Choice> sizes, String chosen, String count) {}

    /// Something that should be put right, as a sentence that says what to do.
    public record Found(String subject, String field, String text) {}

    /// A cell of the sheet, in hundredths of it.
    public record Cell(int number, String left, String top, String width, String height, boolean used) {}

    /// The first sheet.
    ///
    /// @param picture its address; empty when there is nothing to be seen
    /// @param shape width and height for the style
    /// @param cells of a stock paper; empty for whole pages
    /// @param findings what should be put right
    /// @param note how much was looked at
    /// @param trouble why there is no picture; may be empty
    public record Sight(
            String picture, String shape, List<Cell> cells, List<Found> findings, String note, String trouble) {}

    Map<PlantKey, PlantRecord> plants(PrintForm form) {
        return benchleaf
                .catalog()
                .plants(form.lines().stream()
                        .map(PrintForm.Line::plant)
                        .distinct()
                        .toList());
    }

    Map<String, Object> model(PrintForm form, Map<PlantKey, PlantRecord> plants) {
        Map<String, String> fields = new HashMap<>();
        for (String name : List.of("doc", "card", "sign", "paper", "dpi", "order", "printer")) {
            fields.put(name, form.field(name));
        }
        fields.put("language", or(form, "language", benchleaf.style().language().getLanguage()));
        fields.put("units", or(form, "units", benchleaf.style().lengths().name().toLowerCase(Locale.ROOT)));
        fields.put(
                "page",
                or(
                        form,
                        "page",
                        benchleaf.settings().choices().look().paper().name().toLowerCase(Locale.ROOT)));
        fields.put(
                "palette",
                or(form, "palette", benchleaf.settings().choices().look().palette()));
        for (String name : List.of("name", "need", "kind", "place", "list")) {
            fields.put(name, form.field(name));
        }
        return Map.of(
                "rows",
                rows(form, plants),
                "chosen",
                fields,
                "ticks",
                List.copyOf(form.ticks()),
                "choices",
                options.all());
    }

    private static String or(PrintForm form, String name, String usual) {
        return form.field(name).isEmpty() ? usual : form.field(name);
    }

    private List<Row> rows(PrintForm form, Map<PlantKey, PlantRecord> plants) {
        Map<PlantKey, PlantStock> stocks = benchleaf.catalog().stock(plants.keySet());
        YearWeek week = YearWeek.of(benchleaf.today());
        List<Row> rows = new ArrayList<>();
        for (PrintForm.Line line : form.lines()) {
            PlantRecord plant = plants.get(line.plant());
            if (plant == null) {
                continue;
            }
            List<PrintOptions.Choice> sizes = new ArrayList<>();
            sizes.add(new PrintOptions.Choice(line.plant() + "|", wording.text("desk.print.any-size")));
            PlantStock stock = stocks.getOrDefault(line.plant(), PlantStock.none(line.plant()));
            for (ItemRecord item : stock.items()) {
                String value = line.plant() + "|" + item.size();
                if (sizes.stream().noneMatch(size -> size.value().equals(value))) {
                    sizes.add(new PrintOptions.Choice(
                            value,
                            wording.size(item.size(), item.form()) + ": "
                                    + wording.availability(stock.availability(item.key(), week))));
                }
            }
            rows.add(new Row(
                    plant.name().toString(),
                    plant.commonName(wording.language()).orElse(""),
                    "/desk/plants/" + plant.key(),
                    sizes,
                    line.value(),
                    line.count()));
        }
        return rows;
    }

    Sight sight(PrintForm form, Map<PlantKey, PlantRecord> plants) {
        try {
            Optional<StockPaper> paper =
                    form.field("doc").equals("label") ? Optional.of(options.paper(form)) : Optional.empty();
            PrintTask task = options.task(form, plants);
            List<Cell> cells = paper.map(one -> cells(one, form)).orElse(List.of());
            String shape = paper.map(one -> mm(one.sheetWidth()) + " / " + mm(one.sheetHeight()))
                    .orElse("");
            if (task.wanted().isEmpty()) {
                return new Sight("", shape, cells, List.of(), "", "");
            }
            return looked(form, task, shape, cells);
        } catch (Refusal refusal) {
            return trouble(refusal.problem());
        } catch (CatalogException refusal) {
            return trouble(refusal.problem());
        } catch (PrintRefused refusal) {
            return trouble(refusal.problem());
        }
    }

    private Sight trouble(Problem problem) {
        return new Sight("", "", List.of(), List.of(), "", wording.problem(problem));
    }

    /// Makes a file of a part of it, draws a page of that, and throws it away.
    private Sight looked(PrintForm form, PrintTask task, String shape, List<Cell> cells) {
        List<Wanted> some = task.wanted().stream()
                .limit(LOOKED_AT)
                .map(one -> new Wanted(one.plant(), one.size(), one.copies().map(copies -> copies(task, copies))))
                .toList();
        try {
            Path folder = Files.createDirectories(benchleaf.workspace().folder().resolve("print"));
            Path file = Files.createTempFile(folder, "look-", ".pdf");
            try {
                PressOutcome outcome = benchleaf.printTasks().rehearse(task.of(some), file);
                String picture = outcome.pages() == 0
                        ? ""
                        : "data:image/png;base64,"
                                + Base64.getEncoder().encodeToString(PagePicture.png(file, 1, WIDTH));
                String note = task.wanted().size() > LOOKED_AT
                        ? wording.text(
                                "desk.print.looked",
                                Map.of(
                                        "some", wording.count(LOOKED_AT),
                                        "all", wording.count(task.wanted().size())))
                        : "";
                return new Sight(picture, shape, cells, findings(outcome.findings()), note, "");
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /// Labels fill the sheet as they will; of cards one of each says all.
    private static int copies(PrintTask task, int copies) {
        return task.document() instanceof PrintTask.Document.Labels ? Math.min(COPIES, copies) : 1;
    }

    List<Found> findings(List<PrintFinding> findings) {
        return findings.stream()
                .map(finding -> new Found(finding.subject(), finding.field(), wording.problem(finding.problem())))
                .distinct()
                .toList();
    }

    private static List<Cell> cells(StockPaper paper, PrintForm form) {
        List<Cell> cells = new ArrayList<>();
        for (int cell = 0; paper.cells() > 1 && cell < paper.cells(); cell++) {
            cells.add(new Cell(
                    cell + 1,
                    share(paper.x(cell % paper.columns()), paper.sheetWidth()),
                    share(paper.y(cell / paper.columns()), paper.sheetHeight()),
                    share(paper.labelWidth(), paper.sheetWidth()),
                    share(paper.labelHeight(), paper.sheetHeight()),
                    form.used().contains(cell + 1)));
        }
        return cells;
    }

    private static String share(double part, double whole) {
        return String.format(Locale.ROOT, "%.3f", 100 * part / whole);
    }

    private static String mm(double length) {
        return String.format(Locale.ROOT, "%.2f", length);
    }
}
