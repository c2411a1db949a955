package org.benchleaf.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Settings;
import org.benchleaf.app.Workspace;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.app.service.MapShelf;
import org.benchleaf.app.service.PressOrder;
import org.benchleaf.app.service.PrintOrder;
import org.benchleaf.app.service.PrintService;
import org.benchleaf.app.service.SaleRuleService;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.intake.ShopHabits;
import org.benchleaf.catalog.intake.ColumnMap;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.demo.DemoCatalog;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.need.NeedReader;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.rule.Destination;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description =
                "The main job once through on an invented grower's catalog: load, answer three needs, print three documents.")
final class DemoCommand implements Callable<Integer> {
    private static final List<String> NEEDS = List.of(
            "fall color, zone 6, shade, under 5 ft, 40 in #3",
            "evergreen screen 10-20 ft for zone 5b, deer resistant, no Thuja, 20 in #15 by mid April",
            "native shrubs for wet soil, berries in winter, zone 5, 25 in #5, under $40");

    private static final int SHOWN = 5;
    private static final Settings SETTINGS = new Settings(
            "Wrenfold Growers",
            "Ashlock, Pennsylvania · an invented nursery",
            URI.create("http://localhost:7070"),
            Locale.ENGLISH,
            LengthStyle.IMPERIAL,
            Destination.read("US-PA").toOptional());

    private final Console console;
    private final Clock clock;

    @Parameters(
            arity = "0..1",
            paramLabel = "FOLDER",
            defaultValue = "demo",
            description = "where the workspace is made, or used again (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    DemoCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() throws IOException {
        makeWorkspace();
        try (Benchleaf benchleaf = Benchleaf.open(folder, clock)) {
            printDocuments(benchleaf, answerNeeds(benchleaf));
        }
        return ErrorReport.DONE;
    }

    private void makeWorkspace() throws IOException {
        if (Files.isRegularFile(new Workspace(folder).settingsFile())) {
            say("Using the demo workspace that is there: " + folder);
            return;
        }
        Workspace workspace = Workspace.create(folder, SETTINGS);
        int plants = 0;
        int lots = 0;
        try (Catalog catalog = Catalog.create(workspace.database())) {
            ImportService imports = new ImportService(catalog, new MapShelf(workspace.mapsFolder()), ShopHabits.NONE);
            for (String file : DemoCatalog.plantFiles()) {
                plants += load(imports, file, ColumnMaps.ownPlants()).plants().size();
            }
            for (String file : DemoCatalog.stockFiles()) {
                lots += load(imports, file, ColumnMaps.ownStock()).lots().size();
            }
            loadRules(new SaleRuleService(catalog));
        }
        say("Loaded " + plants + " plants and " + lots + " lots of " + SETTINGS.shopName()
                + ", an invented nursery with real plants, into " + folder);
    }

    private static void loadRules(SaleRuleService rules) throws IOException {
        for (String file : DemoCatalog.ruleFiles()) {
            try (InputStream content = DemoCatalog.open(file)) {
                rules.load(SaleRuleService.read(file.substring(file.indexOf('/') + 1), content.readAllBytes()));
            }
        }
    }

    private static ImportPlan load(ImportService imports, String file, ColumnMap map) throws IOException {
        try (InputStream content = DemoCatalog.open(file)) {
            ImportPlan plan = imports.plan(file, content.readAllBytes(), map);
            imports.apply(plan);
            return plan;
        }
    }

    /// @return the plants shown, in the order shown
    private List<PlantRecord> answerNeeds(Benchleaf benchleaf) {
        YearWeek week = YearWeek.of(benchleaf.today());
        NeedReader reader = benchleaf.needReader();
        Map<PlantKey, PlantRecord> shown = new LinkedHashMap<>();
        for (String need : NEEDS) {
            NeedReading reading = reader.read(need, benchleaf.today());
            NeedAnswer answer = benchleaf.needSearch().answer(new NeedQuery(reading.need(), "", week, 0, SHOWN));
            say("");
            say("» " + need);
            new AnswerText(benchleaf.wording()).write(reading, reading.need().wishes(), answer, 0, week, console.out());
            answer.matches().forEach(match -> shown.put(match.plant().key(), match.plant()));
        }
        return List.copyOf(shown.values());
    }

    private void printDocuments(Benchleaf benchleaf, List<PlantRecord> shown) {
        PlantRecord plant = shown.get(0);
        Path print = folder.resolve("print");
        PrintService printing = benchleaf.printing();
        PressOrder usual = PressOrder.USUAL;
        printing.sheets().print(List.of(plant), SheetFormat.LETTER, false, usual, print.resolve("product-sheet.pdf"));
        printing.cards()
                .print(
                        List.of(Wanted.one(plant)),
                        true,
                        CardFormat.LARGE,
                        PrintOrder.GIVEN,
                        usual,
                        print.resolve("bench-card.pdf"));
        LabelRun run = LabelRun.on(printing.paper("letter-30"));
        List<Wanted> all = shown.stream().map(Wanted::one).toList();
        printing.labels().print(all, false, run, PrintOrder.GIVEN, usual, print.resolve("labels.pdf"));
        say("");
        say("Printed for " + plant.name() + ":");
        say("  " + print.resolve("product-sheet.pdf"));
        say("  " + print.resolve("bench-card.pdf"));
        say("  " + print.resolve("labels.pdf") + " (30 to a sheet, one for every lot of the plants above)");
        String at = folder.equals(Path.of("demo")) ? "" : " --workspace " + folder;
        say("The codes lead to the live page. See it with ./benchleaf serve" + at + " and open "
                + LiveLink.of(benchleaf.settings().base(), plant.key()));
    }

    private void say(String line) {
        console.out().println(line);
    }
}
