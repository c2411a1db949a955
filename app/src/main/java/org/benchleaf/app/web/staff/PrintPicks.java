package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.DeliveryReader;
import org.benchleaf.app.service.NeedReaders;
import org.benchleaf.app.service.PlantFinder;
import org.benchleaf.app.service.Wanted;
import org.benchleaf.app.web.route.Upload;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.Match;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.stock.StockSize;

/// From what somebody typed, pasted or sent in to lines of the print desk: a name, a need, what is here of a kind or in
/// a place, what was delivered.
final class PrintPicks {
    private static final Set<String> HEADINGS = Set.of("plant", "name", "key", "botanical name");

    private final Benchleaf benchleaf;
    private final NeedReaders needs;

    PrintPicks(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.needs = new NeedReaders(benchleaf);
    }

    /// Everything that the form asks to add.
    ///
    /// @throws Refusal when something of it is not understood; nothing is added then
    List<PrintForm.Line> asked(PrintForm form, Optional<Upload> file) {
        List<PrintForm.Line> picked = new ArrayList<>();
        if (!form.field("name").isEmpty()) {
            picked.add(PrintForm.line(
                    benchleaf.plantFinder().find(form.field("name")), Optional.empty(), Optional.empty()));
        }
        if (!form.field("need").isEmpty()) {
            picked.addAll(needed(form.field("need")));
        }
        if (!form.field("kind").isEmpty() || !form.field("place").isEmpty()) {
            picked.addAll(here(form.field("kind"), form.field("place")));
        }
        if (!form.field("list").isEmpty()) {
            picked.addAll(delivered("pasted.csv", headed(form.field("list")).getBytes(StandardCharsets.UTF_8)));
        }
        file.ifPresent(sent -> picked.addAll(delivered(sent)));
        return picked;
    }

    /// Plants that are known to meet every wish.
    private List<PrintForm.Line> needed(String words) {
        NeedReading read = needs.reader().read(words.substring(0, Math.min(500, words.length())), benchleaf.today());
        if (read.need().wishes().isEmpty() || !read.notUnderstood().isEmpty()) {
            throw Desk.refusal(
                    "desk.print.need",
                    read.need().wishes().isEmpty() ? words : String.join(", ", read.notUnderstood()));
        }
        List<Match> found = benchleaf
                .needSearch()
                .answer(new NeedQuery(
                        read.need(), "", YearWeek.of(benchleaf.today()), 0, PrintForm.MOST_LINES, Set.of()))
                .matches();
        List<PrintForm.Line> lines = found.stream()
                .filter(match -> match.fit().reasons().stream().allMatch(reason -> reason instanceof Reason.Met))
                .map(match -> PrintForm.line(match.plant(), Optional.empty(), Optional.empty()))
                .toList();
        if (lines.isEmpty()) {
            throw Desk.refusal("desk.print.need.none", words);
        }
        return lines;
    }

    /// What can be taken now of a kind, in places that begin so.
    private List<PrintForm.Line> here(String kind, String place) {
        YearWeek week = YearWeek.of(benchleaf.today());
        String start = place.toLowerCase(Locale.ROOT);
        List<PlantStock> stocks = new ArrayList<>();
        benchleaf.catalog().forEachStock(stock -> {
            if (stock.lots().stream().anyMatch(lot -> isAt(lot, start))) {
                stocks.add(stock);
            }
        });
        Map<PlantKey, PlantRecord> plants = benchleaf
                .catalog()
                .plants(stocks.stream().map(PlantStock::plant).toList());
        List<PrintForm.Line> lines = new ArrayList<>();
        for (PlantStock stock : stocks) {
            PlantRecord plant = plants.get(stock.plant());
            if (plant == null || plant.retired() || !isOf(plant, kind)) {
                continue;
            }
            for (ItemRecord item : stock.items()) {
                boolean stands =
                        stock.lots().stream().anyMatch(lot -> lot.item().equals(item.key()) && isAt(lot, start));
                if (stands && stock.freeBy(item.key(), week) > 0) {
                    lines.add(PrintForm.line(plant, Optional.of(item.size()), Optional.empty()));
                }
            }
        }
        if (lines.isEmpty()) {
            throw Desk.refusal("desk.print.here.none", (kind + " " + place).strip());
        }
        return lines.stream().distinct().toList();
    }

    private static boolean isAt(LotRecord lot, String start) {
        return lot.count() > 0 && lot.place().toLowerCase(Locale.ROOT).startsWith(start);
    }

    private static boolean isOf(PlantRecord plant, String kind) {
        return kind.isEmpty()
                || kind.equals("any")
                || plant.facts().value(Attributes.LIFE_FORM).orElse(Set.<LifeForm>of()).stream()
                        .anyMatch(form -> form.term().equals(kind));
    }

    private List<PrintForm.Line> delivered(Upload upload) {
        try (InputStream content = upload.content()) {
            return delivered(ImportPages.safeName(upload.name()), content.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private List<PrintForm.Line> delivered(String name, byte[] content) {
        PlantFinder finder = benchleaf.plantFinder();
        try {
            Path incoming =
                    Files.createDirectories(benchleaf.workspace().folder().resolve("incoming"));
            Path own = Files.createTempDirectory(incoming, "sent-");
            Path file = own.resolve(name);
            try {
                Files.write(file, content);
                List<PrintForm.Line> lines = new ArrayList<>();
                for (Wanted one : DeliveryReader.read(file, finder)) {
                    one.size().ifPresent(size -> checkSold(one.plant(), size));
                    lines.add(PrintForm.line(one.plant(), one.size(), one.copies()));
                }
                return lines;
            } finally {
                Files.deleteIfExists(file);
                Files.deleteIfExists(own);
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private void checkSold(PlantRecord plant, StockSize size) {
        PlantStock stock =
                benchleaf.catalog().stock(List.of(plant.key())).getOrDefault(plant.key(), PlantStock.none(plant.key()));
        if (stock.items().stream().noneMatch(item -> item.size().equals(size))) {
            throw new Refusal(Problem.of("item.no-such-size", size.toString())
                    .with("plant", plant.name().toString())
                    .with(
                            "accepted",
                            String.join(
                                    ", ",
                                    stock.items().stream()
                                            .map(item -> item.size().toString())
                                            .distinct()
                                            .toList())));
        }
    }

    /// Pasted lines get the headings that nobody types: a plant, then its size or how many, then how many.
    static String headed(String pasted) {
        String first = pasted.lines().findFirst().orElse("").toLowerCase(Locale.ROOT);
        String mark = pasted.contains("\t") ? "\t" : pasted.contains(";") ? ";" : ",";
        if (Arrays.stream(first.split(mark))
                .map(cell -> cell.strip().replace("\"", ""))
                .anyMatch(HEADINGS::contains)) {
            return pasted;
        }
        List<String[]> rows = pasted.lines()
                .filter(line -> !line.isBlank())
                .map(line -> line.split(mark, 3))
                .toList();
        boolean counts =
                rows.stream().allMatch(row -> row.length < 2 || row[1].strip().matches("\\d*"));
        StringBuilder table = new StringBuilder(counts ? "plant,count\n" : "plant,size,count\n");
        for (String[] row : rows) {
            int cells = counts ? 2 : 3;
            for (int cell = 0; cell < cells; cell++) {
                String text = cell < row.length ? row[cell].strip().replaceAll("^\"|\"$", "") : "";
                table.append(cell == 0 ? "" : ",")
                        .append('"')
                        .append(text.replace("\"", "\"\""))
                        .append('"');
            }
            table.append('\n');
        }
        return table.toString();
    }
}
