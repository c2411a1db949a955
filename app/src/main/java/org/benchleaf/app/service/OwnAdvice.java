package org.benchleaf.app.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.intake.Place;
import org.benchleaf.catalog.intake.RawRow;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.search.substitute.Advised;
import org.benchleaf.search.substitute.Publication;
import org.benchleaf.search.substitute.PublishedAdvice;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;

/// A shop's own table of what to plant instead of what: what its sellers know, and lists of its state. Columns
/// `original` and `instead`, botanical names; and, where it is not the shop's own word, `publisher`, `title`, `year`
/// and `address`.
public final class OwnAdvice {
    private OwnAdvice() {}

    /// Published advice, and a shop's own after it when it has a table.
    public static PublishedAdvice after(PublishedAdvice published, Path file, String shop) {
        return Files.isRegularFile(file) ? published.with(read(file, shop, genus -> true)) : published;
    }

    /// Reads a table.
    ///
    /// @param file comma separated or a workbook
    /// @param shop whose word a row without a publisher is
    /// @param known whether there is such a genus: `burning bush` reads like a botanical name
    /// @throws Refusal when a heading is missing or a row names no plant; nothing is taken then
    /// @throws org.benchleaf.catalog.intake.SheetException when it cannot be read
    public static List<Advised> read(Path file, String shop, Predicate<String> known) {
        try (Sheet sheet = SheetReader.open(file)) {
            Columns columns = new Columns(sheet, shop, known);
            List<Advised> rows = new ArrayList<>();
            sheet.rows().forEach(row -> rows.add(columns.advised(row)));
            return List.copyOf(rows);
        }
    }

    private record Columns(String file, List<String> headings, String shop, Predicate<String> known) {
        Columns(Sheet sheet, String shop, Predicate<String> known) {
            this(
                    sheet.file(),
                    sheet.headings().stream()
                            .map(heading -> heading.strip().toLowerCase(Locale.ROOT))
                            .toList(),
                    shop,
                    known);
            for (String needed : List.of("original", "instead")) {
                if (!headings.contains(needed)) {
                    throw new Refusal(Problem.of("advice.heading", sheet.file()).with("heading", needed));
                }
            }
        }

        Advised advised(RawRow row) {
            return new Advised(taxon(row, "original"), taxon(row, "instead"), list(row));
        }

        private Publication list(RawRow row) {
            String publisher = cell(row, "publisher");
            return publisher.isEmpty()
                    ? Publication.own(shop)
                    : new Publication(
                            publisher,
                            Set.of(),
                            cell(row, "title"),
                            cell(row, "year"),
                            // only the shop's own word has none
                            Optional.of(cell(row, "address"))
                                    .filter(text -> !text.isEmpty())
                                    .orElse(file));
        }

        /// A cultivar stands for its taxon.
        private TaxonName taxon(RawRow row, String heading) {
            String text = cell(row, heading);
            BotanicalName name = NameReader.read(text)
                    .known()
                    .filter(read -> known.test(read.genus()))
                    .orElseThrow(() -> new Refusal(Problem.of("advice.name", text)
                            .with("place", new Place(file, row.number(), Optional.of(heading)).toString())));
            return TaxonName.of(name);
        }

        private String cell(RawRow row, String heading) {
            int column = headings.indexOf(heading);
            return column < 0 || column >= row.cells().size()
                    ? ""
                    : row.cells().get(column).strip();
        }
    }
}
