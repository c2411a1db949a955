package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.plan.BedArea;
import org.benchleaf.shared.plan.Spacing;

/// A number of plants and how it was worked out.
///
/// @param worked empty when it was said
public record PlantAmount(int plants, String worked) {
    private static final int MOST_WASTE = 100;
    private static final int MOST_ROWS = 1000;

    /// How many plants: said, or worked out from a bed or a row and a spacing.
    ///
    /// @param quantity so many
    /// @param area of a bed
    /// @param row length of a row
    /// @param rows of that length
    /// @param spacing plant to plant
    /// @param waste more for losses, in percent
    public record Asked(
            Optional<Integer> quantity,
            Optional<String> area,
            Optional<String> row,
            int rows,
            Optional<String> spacing,
            Spacing.Pattern pattern,
            double waste) {
        /// @throws Refusal when nothing was said, too much, or something that cannot be
        public PlantAmount amount(Wording words) {
            long said = List.of(quantity.isPresent(), area.isPresent(), row.isPresent()).stream()
                    .filter(given -> given)
                    .count();
            if (said != 1) {
                throw new Refusal(Problem.of("list.amount", ""));
            }
            if (quantity.isPresent()) {
                if (quantity.get() < 1) {
                    throw new Refusal(
                            Problem.of("substitute.quantity", quantity.get().toString()));
                }
                return new PlantAmount(quantity.get(), "");
            }
            if (!(waste >= 0 && waste <= MOST_WASTE)) {
                throw new Refusal(Problem.of("list.waste", Double.toString(waste)));
            }
            if (rows < 1 || rows > MOST_ROWS) {
                throw new Refusal(Problem.of("list.rows", Integer.toString(rows)));
            }
            String distance = spacing.orElseThrow(() -> new Refusal(Problem.of("list.spacing", "")));
            Spacing apart = ok(Spacing.read(distance, pattern));
            int plants = area.isPresent()
                    ? apart.plantsFor(ok(BedArea.read(area.get())), waste / 100)
                    : apart.plantsAlong(ok(Spacing.readLength(row.orElseThrow())), rows, waste / 100);
            return new PlantAmount(plants, worked(words, distance));
        }

        private String worked(Wording words, String distance) {
            List<String> parts = new ArrayList<>();
            parts.add(words.text(
                    area.isPresent() ? "list.worked.area" : rows == 1 ? "list.worked.row" : "list.worked.rows",
                    Map.of(
                            "length", area.or(() -> row).orElse(""),
                            "rows", words.count(rows),
                            "spacing", distance)));
            if (area.isPresent() || rows > 1) {
                parts.add(words.text("list.pattern." + pattern));
            }
            if (waste > 0) {
                parts.add(words.text("list.worked.waste", Map.of("percent", percent(waste))));
            }
            return String.join(words.text("list.comma"), parts);
        }

        private static String percent(double number) {
            return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
        }

        private static <T> T ok(Reading<T> reading) {
            return switch (reading) {
                case Reading.Read<T>(T value) -> value;
                case Reading.Refused<T>(Problem problem) -> throw new Refusal(problem);
            };
        }
    }
}
