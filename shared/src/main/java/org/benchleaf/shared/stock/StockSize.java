package org.benchleaf.shared.stock;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The size a plant is sold in, as the trade writes it; ordered from small to large within a kind.
public sealed interface StockSize extends Comparable<StockSize> {
    /// A pot by its container class: `#3`.
    record Container(ContainerClass of) implements StockSize {
        @Override
        public String toString() {
            return of.mark();
        }
    }

    /// A pot by its diameter in cm, 5 to 60: `19 cm`.
    record MetricPot(int centimetres) implements StockSize {
        public MetricPot {
            if (centimetres < 5 || centimetres > 60) {
                throw new IllegalArgumentException("a pot is 5 to 60 cm wide; got " + centimetres);
            }
        }

        @Override
        public String toString() {
            return centimetres + " cm";
        }
    }

    /// A tree by the caliper of its trunk in quarter inches, 2 (½ in) to 48 (12 in): `2.5 in cal B&B`.
    ///
    /// Caliper is taken 6 in above ground up to and including 4 in, above that at 12 in (ANSI Z60.1).
    record Caliper(int quarterInches, RootPackage roots) implements StockSize {
        public Caliper {
            if (quarterInches < 2 || quarterInches > 48) {
                throw new IllegalArgumentException("caliper must be 0.5 to 12 in; got " + quarterInches / 4.0);
            }
        }

        /// Inches above ground at which it is measured: 6 or 12.
        public int measuredAtInches() {
            return quarterInches <= 16 ? 6 : 12;
        }

        @Override
        public String toString() {
            return number(quarterInches / 4.0) + " in cal " + roots.term();
        }
    }

    /// A plant by its height, an interval in inches: `5-6 ft B&B`, `18-24 in B&B`.
    record Height(int lowInches, int highInches, RootPackage roots) implements StockSize {
        public Height {
            if (lowInches < 3 || highInches < lowInches || highInches > 600) {
                throw new IllegalArgumentException("a height interval is 3 to 600 in, low before high; got %d-%d"
                        .formatted(lowInches, highInches));
            }
        }

        @Override
        public String toString() {
            return span(lowInches, highInches) + " " + roots.term();
        }
    }

    /// A low or spreading plant by its spread, an interval in inches: `15-18 in spread B&B`.
    record Spread(int lowInches, int highInches, RootPackage roots) implements StockSize {
        public Spread {
            if (lowInches < 3 || highInches < lowInches || highInches > 600) {
                throw new IllegalArgumentException("a spread interval is 3 to 600 in, low before high; got %d-%d"
                        .formatted(lowInches, highInches));
            }
        }

        @Override
        public String toString() {
            return span(lowInches, highInches) + " spread " + roots.term();
        }
    }

    private static String span(int lowInches, int highInches) {
        boolean feet = lowInches % 12 == 0 && highInches % 12 == 0 && highInches > 24;
        return feet ? lowInches / 12 + "-" + highInches / 12 + " ft" : lowInches + "-" + highInches + " in";
    }

    Pattern GALLONS = Pattern.compile("(\\d{1,3})\\s*-?\\s*(?:gal|gals|gallons?)\\.?", Pattern.CASE_INSENSITIVE);
    Pattern POT = Pattern.compile("(\\d{1,2})\\s*cm(?:\\s*pots?)?", Pattern.CASE_INSENSITIVE);
    String ROOTS = "(?:\\s*(B\\s*&\\s*B|BB|balled and burlapped|bare\\s*root|BR|container))?";
    Pattern CALIPER = Pattern.compile(
            "(\\d{1,2}(?:\\.\\d{1,2})?)\\s*(?:in|inch|inches|\"|″)\\s*(?:cal|caliper)\\.?" + ROOTS,
            Pattern.CASE_INSENSITIVE);
    Pattern HEIGHT = Pattern.compile(
            "(\\d{1,3})\\s*(?:ft|'|in|\")?\\s*(?:-|–|to)\\s*(\\d{1,3})\\s*(ft|feet|'|′|in|inches|\"|″)(?:\\s*(ht|height|spread)\\.?)?"
                    + ROOTS,
            Pattern.CASE_INSENSITIVE);

    /// Reads a size as [#read(String)] does, and gallons as the classes that a shop calls so.
    static Reading<StockSize> read(String text, ContainerNaming naming) {
        Matcher gallons = GALLONS.matcher(text.strip());
        if (naming == ContainerNaming.GALLON && gallons.matches()) {
            return ContainerClass.ofMark("#" + gallons.group(1))
                    .<Reading<StockSize>>map(of -> Reading.of(new Container(of)))
                    .orElseGet(() -> Reading.refused("size.no-class", text));
        }
        return read(text);
    }

    /// Reads `#3`, `#SP4`, `19 cm`, `2.5 in cal B&B`, `2" cal`, `5-6 ft B&B`, `15-18 in spread`, `18-24"`;
    /// field-grown stock without a word for its roots is taken as balled and burlapped.
    ///
    /// Gallons are refused here: a class is not a gallon, so only a shop can say what its `3 gal` is.
    static Reading<StockSize> read(String text) {
        String wanted = text.strip();
        Optional<ContainerClass> container =
                wanted.matches("(?i)(#|no\\.?)\\s*\\w+") ? ContainerClass.ofMark(wanted) : Optional.empty();
        if (container.isPresent()) {
            return Reading.of(new Container(container.get()));
        }
        if (wanted.matches("(?i).*\\b(gal|gallons?)\\b\\.?.*")) {
            return Reading.refused("size.gallon", text);
        }
        try {
            return readMeasured(wanted)
                    .<Reading<StockSize>>map(Reading::of)
                    .orElseGet(() -> Reading.refused("size.unknown", text));
        } catch (IllegalArgumentException outOfRange) {
            return Reading.refused("size.unknown", text);
        }
    }

    private static Optional<StockSize> readMeasured(String wanted) {
        Matcher pot = POT.matcher(wanted);
        if (pot.matches()) {
            return Optional.of(new MetricPot(Integer.parseInt(pot.group(1))));
        }
        Matcher caliper = CALIPER.matcher(wanted);
        if (caliper.matches()) {
            double quarters = Double.parseDouble(caliper.group(1)) * 4;
            return quarters == Math.rint(quarters)
                    ? Optional.of(new Caliper((int) quarters, roots(caliper.group(2))))
                    : Optional.empty();
        }
        Matcher height = HEIGHT.matcher(wanted);
        if (height.matches()) {
            int inches = height.group(3).matches("(?i)ft|feet|'|′") ? 12 : 1;
            int low = Integer.parseInt(height.group(1)) * inches;
            int high = Integer.parseInt(height.group(2)) * inches;
            RootPackage roots = roots(height.group(5));
            boolean spread = "spread".equalsIgnoreCase(height.group(4));
            return Optional.of(spread ? new Spread(low, high, roots) : new Height(low, high, roots));
        }
        return Optional.empty();
    }

    private static RootPackage roots(@org.jspecify.annotations.Nullable String word) {
        if (word == null) {
            return RootPackage.BALLED_AND_BURLAPPED;
        }
        return switch (word.toLowerCase(Locale.ROOT).replaceAll("\\s", "")) {
            case "bareroot", "br" -> RootPackage.BARE_ROOT;
            case "container" -> RootPackage.CONTAINER;
            default -> RootPackage.BALLED_AND_BURLAPPED;
        };
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    /// Where the size stands in lists: pots by class and width, then heights, then calipers.
    private double rank() {
        return switch (this) {
            case MetricPot pot -> pot.centimetres() / 10.0;
            case Container container -> 10 + container.of().ordinal();
            case Height height -> 100 + height.lowInches() + height.highInches() / 1000.0;
            case Spread spread -> 100 + spread.lowInches() + spread.highInches() / 1000.0;
            case Caliper caliper -> 1000 + caliper.quarterInches();
        };
    }

    @Override
    default int compareTo(StockSize other) {
        int byRank = Double.compare(rank(), other.rank());
        return byRank != 0 ? byRank : toString().compareTo(other.toString());
    }
}
