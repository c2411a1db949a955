package org.benchleaf.app;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.app.service.ContactSheetService;
import org.benchleaf.app.service.DocumentAssembler;
import org.benchleaf.app.service.DocumentService;
import org.benchleaf.app.service.PhotoFolder;
import org.benchleaf.app.service.PrintDesk;
import org.benchleaf.app.service.PrintService;
import org.benchleaf.app.service.Relatives;
import org.benchleaf.app.service.SheetAssembler;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Palette;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.WebDocuments;
import org.benchleaf.render.page.Shop;
import org.benchleaf.shared.Problem;

/// Makes everything that prints in one open workspace.
///
/// @param shop who prints
/// @param content with the shop's own files, without its inks
/// @param photographs that pages may show
record PaperServices(
        Settings settings, Shop shop, Catalog catalog, ContentPack content, PhotoFolder photographs, Clock clock) {
    SheetAssembler sheets(Wording words, NameBook names) {
        return new SheetAssembler(settings, shop, catalog.view(), new Relatives(names), words);
    }

    SheetAssembler sheets(PrintStyle style, NameBook names) {
        return sheets(Wording.open(content, style.language(), style.lengths(), style.containers()), names);
    }

    PrintService printing(PrintStyle style, NameBook names) {
        return printing(style, settings.choices().look().palette(), catalog.prints(), names);
    }

    /// Worded and inked otherwise, written down in another ledger.
    PrintService printing(PrintStyle style, String palette, PrintLedger ledger, NameBook names) {
        return new PrintService(desk(style, palette, ledger, names));
    }

    private PrintDesk desk(PrintStyle style, String palette, PrintLedger ledger, NameBook names) {
        return new PrintDesk(
                catalog.view(),
                sheets(style, names),
                printer(palette),
                content,
                style,
                clock,
                ledger,
                settings.place());
    }

    DocumentService documents(PrintStyle style, NameBook names) {
        PrintDesk desk = desk(style, settings.choices().look().palette(), catalog.prints(), names);
        return new DocumentService(desk, assembler(desk.sheets()), WebDocuments.using(content, photographs));
    }

    ContactSheetService contactSheet(PrintStyle style, NameBook names) {
        return new ContactSheetService(
                catalog.view(), content, style, worded -> sheets(worded, names), this::printer, this::assembler);
    }

    /// @throws Refusal when the settings name a palette that is not there
    Printer printer() {
        return printer(settings.choices().look().palette());
    }

    /// @throws Refusal when there is no palette of that name
    Printer printer(String palette) {
        return printer(inInks(palette));
    }

    private Printer printer(ContentPack pack) {
        return Printer.using(pack, photographs);
    }

    /// The accent of the shop is made for its own palette.
    private ContentPack inInks(String name) {
        ShopLook look = settings.choices().look();
        List<Palette> known = content.palettes();
        Palette chosen = known.stream()
                .filter(palette -> palette.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new Refusal(Problem.of("print.palette", name)
                        .with("accepted", known.stream().map(Palette::name).collect(Collectors.joining(", ")))));
        return content.withPalette(look.accent()
                .filter(accent -> name.equals(look.palette()))
                .map(chosen::withAccent)
                .orElse(chosen));
    }

    DocumentAssembler assembler(SheetAssembler sheets) {
        return new DocumentAssembler(catalog.view(), sheets, settings.base());
    }

    /// A line for each address besides that of the settings on which printed codes depend.
    List<String> otherBases(Wording words) {
        return catalog.prints().bases().stream()
                .filter(base -> !base.base().equals(settings.base().toString()))
                .map(base -> words.text(
                        "prints.elsewhere",
                        Map.of(
                                "copies", words.count(base.copies()),
                                "base", base.base(),
                                "date", base.last().toString().substring(0, 10))))
                .toList();
    }
}
