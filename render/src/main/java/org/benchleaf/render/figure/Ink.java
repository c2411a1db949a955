package org.benchleaf.render.figure;

import org.benchleaf.shared.color.Srgb;

/// What a shape is colored with: a color of the plant, which is the same everywhere, or a part of the page,
/// which a dark screen may turn over.
public sealed interface Ink {
    /// A true color.
    record Plant(Srgb color) implements Ink {}

    /// A part of the page.
    enum Role implements Ink {
        /// Words.
        TEXT(new Srgb(0x26, 0x2A, 0x26)),
        /// Quieter words; contrast with white at least 4.5.
        SOFT(new Srgb(0x5A, 0x60, 0x5A)),
        /// Rules, ticks and the ground.
        LINE(new Srgb(0x8A, 0x90, 0x8A)),
        /// Fine tracks that carry nothing.
        TRACK(new Srgb(0xCF, 0xD3, 0xCC)),
        /// The person and the dark bands of the rule.
        SCALE(new Srgb(0xCB, 0xD0, 0xC9)),
        /// The paper itself.
        PAPER(new Srgb(0xFF, 0xFF, 0xFF));

        private final Srgb onPaper;

        Role(Srgb onPaper) {
            this.onPaper = onPaper;
        }

        public Srgb onPaper() {
            return onPaper;
        }
    }

    /// The color on white paper.
    default Srgb onPaper() {
        return switch (this) {
            case Plant(Srgb color) -> color;
            case Role role -> role.onPaper();
        };
    }
}
