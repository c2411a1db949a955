package org.benchleaf.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Palette;
import org.benchleaf.content.Wording;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.Photographs;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.WebDocuments;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.Money;

/// Prints every document of the shop's hardest plants into a folder, to be looked at before a new palette, wording or
/// template is used: each size of card, each paper, each language, each palette. What cannot be printed is told, and
/// the rest is printed all the same.
public final class ContactSheetService {
    private static final Money DEAR = Money.usDollars("12250.00");

    private final CatalogView catalog;
    private final ContentPack content;
    private final PrintStyle style;
    private final Function<PrintStyle, SheetAssembler> assemblers;
    private final Function<ContentPack, Printer> printers;
    private final Function<SheetAssembler, DocumentAssembler> documents;

    /// @param assemblers make sheets worded in a style
    /// @param printers print with a content pack
    /// @param documents make documents of many plants
    public ContactSheetService(
            CatalogView catalog,
            ContentPack content,
            PrintStyle style,
            Function<PrintStyle, SheetAssembler> assemblers,
            Function<ContentPack, Printer> printers,
            Function<SheetAssembler, DocumentAssembler> documents) {
        this.catalog = catalog;
        this.content = content;
        this.style = style;
        this.assemblers = assemblers;
        this.printers = printers;
        this.documents = documents;
    }

    /// @param told gets each file with its pages, and what could not be printed
    /// @return how many files could not be printed
    public int print(Path folder, LocalDateTime now, Consumer<String> told) {
        List<PlantRecord> plants = HardCases.of(catalog);
        Map<PlantKey, PlantStock> stock =
                catalog.stock(plants.stream().map(PlantRecord::key).toList());
        Wording words = Wording.open(content, Locale.ENGLISH, LengthStyle.IMPERIAL);
        Run run = new Run(folder, words, told);
        Printer printer = printers.apply(content);
        SheetAssembler own = assemblers.apply(style);
        List<BenchCard> cards = cards(own, plants, stock, now.toLocalDate());
        for (CardFormat format : CardFormat.values()) {
            run.file(
                    "card-" + format.name().toLowerCase(Locale.ROOT),
                    file -> PressRoom.write(file, out -> printer.benchCards(cards, format, style, out)));
        }
        List<PlantSheet> sheets = sheets(own, plants, stock, now);
        for (SheetFormat format : SheetFormat.values()) {
            run.file(
                    "sheet-" + format.name().toLowerCase(Locale.ROOT),
                    file -> PressRoom.write(file, out -> printer.plantSheets(sheets, format, style, out)));
        }
        for (Palette palette : content.palettes()) {
            Printer tinted = printers.apply(content.withPalette(palette));
            run.file(
                    "palette-" + palette.name(),
                    file -> PressRoom.write(
                            file,
                            out -> tinted.plantSheets(
                                    sheets.subList(0, Math.min(2, sheets.size())), SheetFormat.LETTER, style, out)));
        }
        for (String language : Wording.paperLanguages(content)) {
            language(new PrintStyle(Locale.of(language), LengthStyle.BOTH, style.containers()), plants, now, run);
        }
        return run.refused;
    }

    private void language(PrintStyle worded, List<PlantRecord> plants, LocalDateTime now, Run run) {
        DocumentAssembler assembler = documents.apply(assemblers.apply(worded));
        DocumentService service = new DocumentService(
                assembler, printers.apply(content), WebDocuments.using(content, Photographs.NONE), worded);
        SheetFormat format = SheetFormat.A4;
        String end = "-" + worded.language().getLanguage();
        List<PlantRecord> four = plants.subList(0, Math.min(4, plants.size()));
        run.file(
                "availability" + end,
                file -> service.availability(assembler.availability(plants, now, true), format, file));
        run.file(
                "bulletin" + end,
                file -> service.bulletin(
                        assembler.bulletin(
                                plants,
                                List.of(),
                                now.toLocalDate(),
                                now.toLocalDate().plusDays(6),
                                now),
                        format,
                        file));
        if (four.size() > 1) {
            run.file("comparison" + end, file -> service.comparison(assembler.comparison(four, now), format, file));
        }
    }

    /// Each card with its own price and with a dear one.
    private static List<BenchCard> cards(
            SheetAssembler sheets, List<PlantRecord> plants, Map<PlantKey, PlantStock> stock, LocalDate day) {
        List<BenchCard> cards = new ArrayList<>();
        for (PlantRecord plant : plants) {
            PlantStock own = stock.getOrDefault(plant.key(), PlantStock.none(plant.key()));
            BenchCard card = sheets.card(plant, own.items().stream().findFirst(), day);
            cards.add(card);
            cards.add(card.withPrice(DEAR));
        }
        return cards;
    }

    private static List<PlantSheet> sheets(
            SheetAssembler sheets, List<PlantRecord> plants, Map<PlantKey, PlantStock> stock, LocalDateTime now) {
        return plants.stream()
                .map(plant -> sheets.sheet(plant, stock.getOrDefault(plant.key(), PlantStock.none(plant.key())), now))
                .toList();
    }

    private interface Job {
        int print(Path file);
    }

    /// One run: keeps going when a file is refused.
    private static final class Run {
        private final Path folder;
        private final Wording words;
        private final Consumer<String> told;
        private int refused;

        Run(Path folder, Wording words, Consumer<String> told) {
            this.folder = folder;
            this.words = words;
            this.told = told;
        }

        void file(String name, Job job) {
            Path file = folder.resolve(name + ".pdf");
            try {
                int pages = job.print(file);
                told.accept(file + ": " + pages);
            } catch (PrintRefused refusal) {
                tell(file, refusal.problem());
            } catch (Refusal refusal) {
                tell(file, refusal.problem());
            }
        }

        private void tell(Path file, Problem problem) {
            refused++;
            told.accept(file + ": " + words.problem(problem));
        }
    }
}
