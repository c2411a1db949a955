package org.benchleaf.shared.need;

import java.util.Optional;
import org.benchleaf.shared.fact.Source;

/// Why a plant meets a wish or not, as a value; content puts it into words.
public sealed interface Reason {
    Wish wish();

    /// The wish is met.
    ///
    /// @param seen what the catalog says
    /// @param knownFor whether the plant is among those that are recommended for it before others
    record Met(Wish wish, Seen seen, boolean knownFor) implements Reason {
        public Met(Wish wish, Seen seen) {
            this(wish, seen, false);
        }
    }

    /// The wish is missed.
    ///
    /// @param seen what the catalog says
    /// @param by how far off
    record Missed(Wish wish, Seen seen, Shortfall by) implements Reason {}

    /// The catalog lacks the fact: a gap in what we know, never a fault of the plant.
    record Unknown(Wish wish) implements Reason {}

    /// What the judgement rests on.
    ///
    /// @param value the fact in its stored form, for example `90-150 cm`
    /// @param source who states it; absent for stock and prices, which are the shop's own
    /// @param inherited whether it is the taxon's fact, not stated for the cultivar itself
    record Seen(String value, Optional<Source> source, boolean inherited) {
        /// A fact of the shop itself.
        public static Seen own(String value) {
            return new Seen(value, Optional.empty(), false);
        }
    }

    /// By how much a wish is missed.
    sealed interface Shortfall {
        /// Too tall, too wide (positive) or too short (negative), in cm.
        record Centimetres(int cm) implements Shortfall {}

        /// Half zones too cold (negative) or too warm (positive) a site.
        record HalfZones(int halves) implements Shortfall {}

        /// Steps of light, moisture or tolerance away; 1 or more.
        record Steps(int steps) implements Shortfall {}

        /// Tenths of pH below (negative) or above what it grows in.
        record PhTenths(int tenths) implements Shortfall {}

        /// Months away from those asked for; 1 to 6.
        record Months(int months) implements Shortfall {}

        /// Another color; CIEDE2000 from the nearest one it has.
        record OtherColor(double difference) implements Shortfall {}

        /// So many fewer than asked for can be had; 1 or more.
        record TooFew(int missing) implements Shortfall {}

        /// Dearer by so many cents or what the currency has; 1 or more.
        record TooDear(long minor) implements Shortfall {}

        /// Simply not so.
        record NotSo() implements Shortfall {}
    }
}
