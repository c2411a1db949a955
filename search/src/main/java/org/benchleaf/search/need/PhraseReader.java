package org.benchleaf.search.need;

import java.util.Optional;

/// Reads one kind of phrase.
interface PhraseReader {
    /// What the words from a place on are, if they are of this kind.
    Optional<Taken> read(Sentence sentence, int at);
}
