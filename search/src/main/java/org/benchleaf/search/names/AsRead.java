package org.benchleaf.search.names;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.catalog.names.NameNote;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.search.index.FoldedName;
import org.benchleaf.shared.name.BotanicalName;

/// What a text says when it is read as a botanical name: without what is no part of one, and the shorter ways in
/// which a catalog may write the same.
///
/// @param typed the text without authors, marks of rights, sizes and prices
/// @param shorter other ways to write the name, folded, the fullest first; empty unless every part was understood
record AsRead(String typed, List<String> shorter) {
    private static final Set<NameNote.Kind> NO_PART = Set.of(
            NameNote.Kind.AUTHORS,
            NameNote.Kind.PARENTS,
            NameNote.Kind.MARK,
            NameNote.Kind.GOODS,
            NameNote.Kind.LETTER_X,
            NameNote.Kind.CV);

    AsRead {
        shorter = List.copyOf(shorter);
    }

    static AsRead of(String text) {
        String typed = text.strip();
        if (!(NameReader.read(typed) instanceof NameReading.Read(BotanicalName name, List<NameNote> notes))) {
            return new AsRead(typed, List.of());
        }
        boolean more = notes.stream().anyMatch(note -> NO_PART.contains(note.kind()));
        String bare = more ? name.toString() : typed;
        String folded = FoldedName.of(bare);
        BotanicalName label = name.labelName();
        Stream<BotanicalName> ways = name.cultivar().isEmpty()
                ? Stream.of(name, label)
                : Stream.of(name, label, label.withoutTradeDesignation());
        return new AsRead(
                bare,
                ways.map(way -> FoldedName.of(way.toString()))
                        .filter(way -> !way.equals(folded))
                        .distinct()
                        .toList());
    }
}
