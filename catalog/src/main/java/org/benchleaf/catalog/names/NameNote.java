package org.benchleaf.catalog.names;

/// Something told about the reading of a name: a piece set apart, or a liberty taken.
///
/// @param kind what it is
/// @param text the piece of the text that it concerns, as written
public record NameNote(Kind kind, String text) {
    /// What a note tells; `guess` marks those where the reader may be wrong and a person should look.
    public enum Kind {
        /// Author citation, `(Torr. & A. Gray) Fosberg`: not part of the name on a label.
        AUTHORS(false),
        /// The parents of a hybrid, or a remark in square brackets.
        PARENTS(false),
        /// A sign of rights: `®`, `TM`, `PP12345`, `PPAF`, `PBR`.
        MARK(false),
        /// A size, a price or how the roots are held, behind the name: `#3`, `24-30"`, `$24.50`, `B&B`.
        GOODS(false),
        /// The letter x stands for the sign ×.
        LETTER_X(false),
        /// Double, typographic or doubled quotes stand for single ones.
        OTHER_QUOTES(false),
        /// `cv.` stands for quotes.
        CV(false),
        /// Punctuation of a sentence, not of the name.
        PUNCTUATION(false),
        /// A rank between the species and the last rank, which is not part of the name (ICN Art. 24.1).
        MIDDLE_RANK(false),
        /// A rank of a hybrid: `nothovar.`
        HYBRID_RANK(false),
        /// A genus shortened to its capital, filled in from the name before it.
        SHORT_GENUS(false),
        /// An epithet shortened to its beginning, `pan.`: whose, is asked of the catalog.
        SHORT_EPITHET(true),
        /// Words without quotes taken as a cultivar epithet.
        MISSING_QUOTES(true),
        /// Capitals, or their lack, taken otherwise than written.
        CAPITALS(true),
        /// A trade designation stands in the quotes of a cultivar epithet.
        TRADE_IN_QUOTES(true),
        /// Several plants, or one not named: `spp.`, `sp.`, `cf.`
        UNNAMED(true),
        /// A hybrid named by its parents: `Magnolia denudata × Magnolia liliiflora`.
        FORMULA(true),
        /// A grex of orchids, which is no Group.
        GREX(true),
        /// A third word without a rank.
        MISSING_RANK(true);

        private final boolean guess;

        Kind(boolean guess) {
            this.guess = guess;
        }

        public boolean guess() {
            return guess;
        }
    }
}
