package org.benchleaf.catalog.names;

/// A piece of a name's text.
///
/// @param kind what kind of piece
/// @param text a word; what stands between quotes or brackets; a sign
/// @param written as it stood in the text
record Token(Kind kind, String text, String written) {
    enum Kind {
        WORD,
        QUOTED,
        ROUND,
        SQUARE,
        /// × or the letter x standing for it.
        HYBRID,
        /// +
        GRAFT,
        /// A sign of rights.
        MARK
    }

    static Token word(String text) {
        return new Token(Kind.WORD, text, text);
    }

    boolean is(Kind wanted) {
        return kind == wanted;
    }
}
