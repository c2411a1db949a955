package org.benchleaf.catalog.names;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.name.BotanicalName;

/// What became of a text that should be a plant's name.
public sealed interface NameReading {
    /// Every part was understood.
    ///
    /// @param name the name
    /// @param notes what was set apart (authors, marks) or taken otherwise than written
    record Read(BotanicalName name, List<NameNote> notes) implements NameReading {
        public Read {
            notes = List.copyOf(notes);
        }

        @Override
        public Optional<BotanicalName> known() {
            return Optional.of(name);
        }
    }

    /// Some of it was understood, and what is left over may matter: never load such a name without asking.
    ///
    /// @param known the part that was understood; empty when not even the genus is sure, as in `H. canariensis`
    /// @param rest what is left over, as written
    /// @param notes as for a name that was read
    record Partly(Optional<BotanicalName> known, String rest, List<NameNote> notes) implements NameReading {
        public Partly {
            notes = List.copyOf(notes);
        }
    }

    /// No name.
    ///
    /// @param problem `name.empty`, `name.unknown` or `name.long`
    record Unread(Problem problem) implements NameReading {
        @Override
        public Optional<BotanicalName> known() {
            return Optional.empty();
        }

        @Override
        public List<NameNote> notes() {
            return List.of();
        }
    }

    /// The name, or the part of it that was understood.
    Optional<BotanicalName> known();

    /// What was set apart or taken otherwise than written; the notes of quotes, letters and punctuation come first.
    List<NameNote> notes();

    /// The texts of the notes of one kind.
    default List<String> noted(NameNote.Kind kind) {
        return notes().stream()
                .filter(note -> note.kind() == kind)
                .map(NameNote::text)
                .toList();
    }
}
