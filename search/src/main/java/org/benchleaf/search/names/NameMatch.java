package org.benchleaf.search.names;

/// How a typed name matched, the surest first; a surer match is never listed after a less sure one.
public enum NameMatch {
    /// The accepted name, letter for letter.
    EXACT,
    /// The accepted name but for case, accents, quotes, hyphens, ranks and hybrid marks.
    FOLDED,
    /// A synonym.
    SYNONYM,
    /// A common name, or the selling name alone.
    COMMON_NAME,
    /// The words typed are in its names, the last one perhaps unfinished.
    PREFIX,
    /// Each word is at most one letter off.
    ONE_EDIT,
    /// Each word is at most two letters off.
    TWO_EDITS,
    /// Sounds alike in the Latin of gardens.
    SOUNDS_ALIKE
}
