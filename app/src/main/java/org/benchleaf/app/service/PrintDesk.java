package org.benchleaf.app.service;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.shared.rule.Destination;

/// What everybody who prints works with.
///
/// @param catalog what is printed
/// @param sheets makes pages of it
/// @param printer puts them on paper
/// @param content stock papers
/// @param style how they are worded
/// @param clock says what today is
/// @param ledger keeps what was printed
/// @param place where the shop sells, for sale rules
public record PrintDesk(
        CatalogView catalog,
        SheetAssembler sheets,
        Printer printer,
        ContentPack content,
        PrintStyle style,
        Clock clock,
        PrintLedger ledger,
        Optional<Destination> place) {
    LocalDate today() {
        return LocalDate.now(clock);
    }

    LocalDateTime now() {
        return LocalDateTime.now(clock).withSecond(0).withNano(0);
    }

    PressRoom room() {
        return new PressRoom(printer, ledger);
    }

    PrintAdvice advice() {
        return new PrintAdvice(place, today());
    }
}
