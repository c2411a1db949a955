package org.benchleaf.catalog.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.NameNote;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Which plant a row means: reads its name and its key, asks the catalog, tells every doubt.
final class NameCells {
    /// What is no part of the name and belongs in another column.
    private static final Set<NameNote.Kind> SET_APART = Set.of(NameNote.Kind.MARK, NameNote.Kind.GOODS);

    private final NameBook book;

    NameCells(NameBook book) {
        this.book = book;
    }

    /// The name in a cell; empty when the row must be left out because of it.
    Optional<BotanicalName> name(String cell, String heading, RowNotes notes) {
        NameReading reading = NameReader.read(cell);
        switch (reading) {
            case NameReading.Unread(Problem problem) -> {
                notes.rowLeftOut(heading, SpreadsheetDamage.explained(problem, cell));
                return Optional.empty();
            }
            case NameReading.Partly(Optional<BotanicalName> known, String rest, List<NameNote> ignored) -> {
                Problem problem = Problem.of("name.partly", cell)
                        .with("rest", rest)
                        .with("known", known.map(BotanicalName::toString).orElse(""));
                notes.rowLeftOut(heading, problem);
                return Optional.empty();
            }
            case NameReading.Read(BotanicalName name, List<NameNote> told) -> {
                told.stream()
                        .filter(note -> note.kind().guess() || SET_APART.contains(note.kind()))
                        .forEach(note -> notes.kept(heading, doubt(note, cell, name)));
                return Optional.of(name);
            }
        }
    }

    /// `name.missing-quotes`, `name.capitals`, `name.trade-in-quotes`, `name.mark`, `name.goods`
    private static Problem doubt(NameNote note, String cell, BotanicalName name) {
        String kind = note.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return Problem.of("name." + kind, cell).with("taken", name.toString()).with("piece", note.text());
    }

    /// The key in a cell; empty when there is none. A text that is no key leaves the row out: it may mean any plant.
    Optional<PlantKey> key(String cell, String heading, RowNotes notes) {
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<PlantKey> key = PlantKey.read(cell).toOptional();
        if (key.isEmpty()) {
            notes.rowLeftOut(heading, SpreadsheetDamage.explained(Problem.of("key.unknown", cell), cell));
        }
        return key;
    }

    /// The plant that goes by this name now or did so once.
    Optional<PlantRecord> plant(BotanicalName name, String heading, RowNotes notes) {
        Optional<PlantKey> accepted = book.byName(name);
        if (accepted.isPresent()) {
            return accepted.flatMap(book::byKey);
        }
        Optional<PlantRecord> bySynonym = book.bySynonym(name.toString()).flatMap(book::byKey);
        bySynonym.ifPresent(plant -> notes.kept(
                heading,
                Problem.of("name.synonym", name.toString())
                        .with("accepted", plant.name().toString())));
        return bySynonym;
    }
}
