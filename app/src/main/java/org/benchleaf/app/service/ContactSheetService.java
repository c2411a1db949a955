package org.benchleaf.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Palette;
import org.benchleaf.content.StockPaper;
import org.benchleaf.content.Wording;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.Money;

/// Prints every document of the shop's hardest plants into a folder, to be looked at before a new palette, wording or
/// template is used: each size of card, each paper, each language, each palette. What cannot be printed is told by
/// name, and the rest is printed all the same.
public final class ContactSheetService {
    private static final Money DEAR = Money.usDollars("12250.00");
    /// Words are longest where both systems of units are shown.
    private static final List<CardFormat> WORDED = List.of(CardFormat.LARGE, CardFormat.SMALL, CardFormat.A6_WIDE);

    private static final List<Integer> COMPARED = List.of(2, 3, 4);

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
    /// @return how many pages and files could not be printed
    public int print(Path folder, LocalDateTime now, Consumer<String> told) {
        List<PlantRecord> plants = HardCases.of(catalog);
        ContactRun run = new ContactRun(folder, Wording.open(content, Locale.ENGLISH, LengthStyle.IMPERIAL), told);
        Printer printer = printers.apply(content).watchedBy(run);
        SheetAssembler own = assemblers.apply(style);
        PrintStock stock = PrintStock.of(catalog, plants);
        List<BenchCard> cards = cards(own, plants, stock, now.toLocalDate());
        for (CardFormat format : CardFormat.values()) {
            cards("card-" + name(format), cards, format, style, printer, run);
        }
        List<PlantSheet> sheets = sheets(own, plants, stock, now);
        for (SheetFormat format : SheetFormat.values()) {
            sheets("sheet-" + name(format), sheets, format, style, printer, run);
        }
        labels(own, plants, stock, printer, run);
        for (Palette palette : content.palettes()) {
            Printer tinted = printers.apply(content.withPalette(palette)).watchedBy(run);
            String name = "palette-" + palette.name();
            sheets(name, firstFew(sheets), SheetFormat.LETTER, style, tinted, run);
            cards(name + "-card", firstFew(cards), CardFormat.LARGE, style, tinted, run);
        }
        for (String language : Wording.paperLanguages(content)) {
            PrintStyle worded = new PrintStyle(Locale.of(language), LengthStyle.BOTH, style.containers());
            language(worded, plants, stock, now, printer, run);
        }
        return run.refused();
    }

    private void language(
            PrintStyle worded,
            List<PlantRecord> plants,
            PrintStock stock,
            LocalDateTime now,
            Printer printer,
            ContactRun run) {
        SheetAssembler sheets = assemblers.apply(worded);
        String end = "-" + worded.language().getLanguage();
        List<BenchCard> cards = cards(sheets, plants, stock, now.toLocalDate());
        for (CardFormat format : WORDED) {
            cards("card-" + name(format) + end, cards, format, worded, printer, run);
        }
        sheets("sheet-a4" + end, sheets(sheets, plants, stock, now), SheetFormat.A4, worded, printer, run);
        DocumentAssembler assembler = documents.apply(sheets);
        LocalDate day = now.toLocalDate();
        for (SheetFormat format : SheetFormat.values()) {
            String of = "-" + name(format) + end;
            document("availability" + of, run, out -> {
                var list = assembler.availability(plants, now, true);
                return printer.availability(list, format, worded, out);
            });
            document("bulletin" + of, run, out -> {
                var bulletin = assembler.bulletin(plants, List.of(), day, day.plusDays(6), now);
                return printer.bulletin(bulletin, format, worded, out);
            });
            document("list" + of, run, out -> {
                var pack = assembler.pack(ContactList.of(plants, stock), now).withoutSheets();
                return printer.listPack(pack, format, worded, out);
            });
            for (int many : COMPARED) {
                if (plants.size() >= many) {
                    document("comparison-" + many + of, run, out -> {
                        var comparison = assembler.comparison(plants.subList(0, many), now);
                        return printer.comparison(comparison, format, worded, out);
                    });
                }
            }
        }
    }

    private static void document(String name, ContactRun run, PressRoom.Pages pages) {
        run.file(name, file -> PressRoom.write(file, pages));
    }

    private static void cards(
            String name, List<BenchCard> cards, CardFormat format, PrintStyle style, Printer printer, ContactRun run) {
        document(name, run, out -> printer.benchCards(cards, format, style, out));
    }

    private static void sheets(
            String name,
            List<PlantSheet> sheets,
            SheetFormat format,
            PrintStyle style,
            Printer printer,
            ContactRun run) {
        document(name, run, out -> printer.plantSheets(sheets, format, style, out));
    }

    /// On every stock paper.
    private void labels(
            SheetAssembler sheets, List<PlantRecord> plants, PrintStock stock, Printer printer, ContactRun run) {
        List<Label> labels = plants.stream()
                .flatMap(plant -> stock.lots(new Wanted(plant, Optional.empty(), Optional.empty())).stream()
                        .map(lot -> sheets.label(plant, stock.item(plant, lot.item()), lot)))
                .toList();
        if (labels.isEmpty()) {
            return;
        }
        for (StockPaper paper : content.papers()) {
            document("labels-" + paper.key(), run, out -> printer.labels(labels, LabelRun.on(paper), style, out));
        }
    }

    /// Each card with its own price and with a dear one.
    private static List<BenchCard> cards(
            SheetAssembler sheets, List<PlantRecord> plants, PrintStock stock, LocalDate day) {
        List<BenchCard> cards = new ArrayList<>();
        for (PlantRecord plant : plants) {
            BenchCard card = sheets.card(plant, stock.item(plant, Optional.empty()), day);
            cards.add(card);
            cards.add(card.withPrice(DEAR));
        }
        return cards;
    }

    private static List<PlantSheet> sheets(
            SheetAssembler sheets, List<PlantRecord> plants, PrintStock stock, LocalDateTime now) {
        return plants.stream()
                .map(plant -> sheets.sheet(plant, stock.of(plant), now))
                .toList();
    }

    private static <T> List<T> firstFew(List<T> all) {
        return all.subList(0, Math.min(2, all.size()));
    }

    private static String name(Enum<?> format) {
        return format.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
