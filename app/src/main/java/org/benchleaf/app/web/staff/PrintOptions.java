package org.benchleaf.app.web.staff;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.PrinterShelf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PrintOrder;
import org.benchleaf.app.service.PrintTask;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Palette;
import org.benchleaf.content.StockPaper;
import org.benchleaf.content.Wording;
import org.benchleaf.render.Calibration;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.PressSettings;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.stock.StockSize;

/// What can be chosen at the print desk, and what a form that chose makes.
final class PrintOptions {
    private static final List<String> CARDS = List.of("small", "large", "grand", "a6", "a5");
    private static final List<String> SIGNS = List.of("sign", "a3");
    private static final List<String> PAGES = List.of("letter", "a4");
    private static final List<String> DPI = List.of("203", "300", "600");

    private final Benchleaf benchleaf;
    private final Wording wording;

    PrintOptions(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
    }

    public record Choice(String value, String label) {}

    /// The lists of choices, by the names of their fields.
    Map<String, List<Choice>> all() {
        Locale here = benchleaf.language();
        return Map.ofEntries(
                Map.entry(
                        "docs", choices(List.of("card", "sign", "label", "sheet", "availability"), "desk.print.doc.")),
                Map.entry("cards", choices(CARDS, "desk.print.card.")),
                Map.entry("signs", choices(SIGNS, "desk.print.sign.")),
                Map.entry("pages", choices(PAGES, "desk.print.page.")),
                Map.entry("orders", choices(List.of("given", "name", "bench"), "desk.print.order.")),
                Map.entry("dpis", DPI.stream().map(dpi -> new Choice(dpi, dpi)).toList()),
                Map.entry(
                        "papers",
                        benchleaf.content().papers().stream()
                                .map(paper -> new Choice(paper.key(), paper.name()))
                                .toList()),
                Map.entry(
                        "palettes",
                        benchleaf.content().palettes().stream()
                                .map(palette -> new Choice(palette.name(), palette.name()))
                                .toList()),
                Map.entry(
                        "languages",
                        benchleaf.paperLanguages().stream()
                                .map(code -> new Choice(
                                        code, wording.sentence(Locale.of(code).getDisplayLanguage(here))))
                                .toList()),
                Map.entry("units", choices(List.of("imperial", "metric", "both"), "desk.print.units.")),
                Map.entry("printers", printers()),
                Map.entry("kinds", kinds()));
    }

    private List<Choice> printers() {
        List<Choice> printers = new ArrayList<>(List.of(new Choice("", wording.text("desk.print.printer.any"))));
        new PrinterShelf(benchleaf.workspace()).names().forEach(name -> printers.add(new Choice(name, name)));
        return printers;
    }

    private List<Choice> kinds() {
        List<Choice> kinds = new ArrayList<>(List.of(
                new Choice("", wording.text("desk.print.kind.none")),
                new Choice("any", wording.text("desk.print.kind.any"))));
        Arrays.stream(LifeForm.values()).forEach(kind -> kinds.add(new Choice(kind.term(), wording.term(kind))));
        return kinds;
    }

    private List<Choice> choices(List<String> values, String word) {
        return values.stream()
                .map(value -> new Choice(value, wording.text(word + value)))
                .toList();
    }

    /// What the form would print.
    ///
    /// @throws Refusal when something of it cannot be
    PrintTask task(PrintForm form, Map<PlantKey, PlantRecord> plants) {
        List<Wanted> wanted = new ArrayList<>();
        for (PrintForm.Line line : form.lines()) {
            Optional.ofNullable(plants.get(line.plant())).ifPresent(plant -> wanted.add(wanted(line, plant)));
        }
        Calibration calibration = form.field("printer").isEmpty()
                ? Calibration.NONE
                : new PrinterShelf(benchleaf.workspace()).printer(form.field("printer"));
        return new PrintTask(
                document(form),
                wanted,
                PrintOrder.valueOf(one(form, "order", List.of("given", "name", "bench"))),
                style(form),
                palette(form),
                new PressSettings(0, false, calibration));
    }

    private static Wanted wanted(PrintForm.Line line, PlantRecord plant) {
        Optional<StockSize> size = Optional.of(line.size())
                .filter(text -> !text.isEmpty())
                .flatMap(text -> StockSize.read(text).toOptional());
        if (line.count().isEmpty()) {
            return new Wanted(plant, size, Optional.empty());
        }
        if (!line.count().matches("[1-9]\\d{0,3}")) {
            throw new Refusal(Problem.of("desk.print.count", line.count())
                    .with("plant", plant.name().toString()));
        }
        return new Wanted(plant, size, Optional.of(Integer.valueOf(line.count())));
    }

    private PrintTask.Document document(PrintForm form) {
        return switch (form.field("doc")) {
            case "card" -> cards(form, "card", CARDS);
            case "sign" -> cards(form, "sign", SIGNS);
            case "label" -> new PrintTask.Document.Labels(run(form), form.ticked("by-count"));
            case "sheet" -> new PrintTask.Document.Sheets(page(form));
            case "availability" -> new PrintTask.Document.Availability(page(form), form.ticked("sold-out"));
            default -> throw Desk.refusal("desk.form", "doc");
        };
    }

    private SheetFormat page(PrintForm form) {
        return form.field("page").isEmpty()
                ? benchleaf.settings().choices().look().paper()
                : SheetFormat.valueOf(one(form, "page", PAGES));
    }

    private static PrintTask.Document cards(PrintForm form, String field, List<String> sizes) {
        CardFormat format = CardFormat.valueOf(one(form, field, sizes));
        return new PrintTask.Document.Cards(form.ticked("wide") ? format.wide() : format, !form.ticked("no-price"));
    }

    /// The stock paper that is chosen.
    StockPaper paper(PrintForm form) {
        return benchleaf.printing().paper(form.field("paper"));
    }

    private LabelRun run(PrintForm form) {
        StockPaper paper = paper(form);
        var order = form.ticked("by-column") ? LabelRun.FillOrder.BY_COLUMN : LabelRun.FillOrder.BY_ROW;
        try {
            return new LabelRun(paper, form.onCells(paper.cells()).used(), order, 0, 0)
                    .with(Integer.parseInt(one(form, "dpi", DPI)), form.ticked("outdoor"), form.ticked("bars"));
        } catch (IllegalArgumentException impossible) {
            throw Desk.refusal("print.run", String.valueOf(impossible.getMessage()));
        }
    }

    private PrintStyle style(PrintForm form) {
        PrintStyle shop = benchleaf.style();
        String language = form.field("language");
        Locale asked = language.isEmpty() ? shop.language() : Locale.forLanguageTag(language);
        if (!benchleaf.paperLanguages().contains(asked.getLanguage())) {
            throw Desk.refusal("desk.form", "language");
        }
        String units = form.field("units");
        LengthStyle lengths = units.isEmpty()
                ? shop.lengths()
                : LengthStyle.valueOf(one(form, "units", List.of("imperial", "metric", "both")));
        return new PrintStyle(asked, lengths, shop.containers());
    }

    private String palette(PrintForm form) {
        String name = form.field("palette").isEmpty()
                ? benchleaf.settings().choices().look().palette()
                : form.field("palette");
        if (benchleaf.content().palettes().stream().map(Palette::name).noneMatch(name::equals)) {
            throw Desk.refusal("desk.form", "palette");
        }
        return name;
    }

    /// One of these words, as the name of its constant; forms of ours send no other.
    private static String one(PrintForm form, String field, List<String> accepted) {
        String word = form.field(field);
        if (!accepted.contains(word)) {
            throw Desk.refusal("desk.form", field);
        }
        return PrintForm.constant(word);
    }
}
