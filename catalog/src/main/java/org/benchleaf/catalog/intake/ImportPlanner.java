package org.benchleaf.catalog.intake;

import java.util.Iterator;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.shared.Problem;

/// Works out what importing a file would do. Nothing is changed, so a dry run prints the very plan that
/// is applied; every row is in the plan or has a finding that says why not.
public final class ImportPlanner {
    private ImportPlanner() {}

    /// @param sheet an open file; its rows are read to the end
    /// @param map what its columns mean
    /// @param book what the catalog holds now
    /// @throws SheetException when the file turns out to be broken on the way
    public static ImportPlan plan(Sheet sheet, ColumnMap map, NameBook book) {
        return plan(sheet, map, book, ShopHabits.NONE, count -> {});
    }

    /// The same, telling how many rows are read.
    ///
    /// @param progress is called after each row with their number
    public static ImportPlan plan(Sheet sheet, ColumnMap map, NameBook book, ShopHabits habits, LongConsumer progress) {
        MappedHeadings headings = new MappedHeadings(sheet, map);
        SpooledList.Builder<Finding> findings = new SpooledList.Builder<>(new FindingFormat());
        findings.addAll(sheet.findings());
        findings.addAll(headings.findings());
        SpooledList.Builder<PlantDraft> plants = new SpooledList.Builder<>(new PlantFormat());
        SpooledList.Builder<LotDraft> lots = new SpooledList.Builder<>(new LotFormat());
        PlantRows plantRows = new PlantRows(map, headings, book);
        StockRows stockRows = new StockRows(headings, book, habits);
        RowFilter filter = new RowFilter();
        boolean toldNameless = false;
        long count = 0;
        Iterator<RawRow> rows = sheet.rows().iterator();
        while (rows.hasNext()) {
            RawRow row = rows.next();
            if (!headings.isComplete()) {
                count++;
                continue;
            }
            Optional<Problem> over = filter.passedOver(row, headings.field(row, Fields.NAME));
            if (over.isPresent()) {
                Place place = new Place(sheet.file(), row.number(), Optional.empty());
                findings.add(new Finding(place, over.get(), Finding.Outcome.PASSED_OVER));
                continue;
            }
            count++;
            progress.accept(count);
            RowNotes notes = new RowNotes(sheet.file(), row);
            Optional<String> nameless = headings.textWithoutHeading(row);
            if (nameless.isPresent() && !toldNameless) {
                toldNameless = true;
                notes.cellLeftOut("", Problem.of("heading.empty", nameless.get()));
            }
            if (row.isUsable()) {
                switch (map.rows()) {
                    case PLANTS -> plantRows.draft(row, notes).ifPresent(plants::add);
                    case STOCK -> stockRows.draft(row, notes).ifPresent(lots::add);
                }
            }
            findings.addAll(notes.findings());
        }
        return new ImportPlan(
                sheet.file(), book.revision(), map.rank(), count, plants.list(), lots.list(), findings.list());
    }
}
