package org.benchleaf.app.cli;

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
import picocli.CommandLine.Option;

/// How many plants: said, or worked out from a bed or a row and a spacing.
final class AmountOptions {
    private static final int MOST_WASTE = 100;
    private static final int MOST_ROWS = 1000;

    @Option(names = "--quantity", paramLabel = "N", description = "so many plants")
    private Optional<Integer> quantity = Optional.empty();

    @Option(
            names = "--area",
            paramLabel = "AREA",
            description = "of the bed: '200 sq ft', '10 x 20 ft', '18 m2'; with --spacing")
    private Optional<String> area = Optional.empty();

    @Option(
            names = "--row",
            paramLabel = "LENGTH",
            description = "length of a row or hedge: '60 ft'; a plant at each end; with --spacing")
    private Optional<String> row = Optional.empty();

    @Option(names = "--rows", paramLabel = "N", defaultValue = "1", description = "rows of that length (default: 1)")
    private int rows;

    @Option(names = "--spacing", paramLabel = "LENGTH", description = "plant to plant, center to center: '18 in'")
    private Optional<String> spacing = Optional.empty();

    @Option(
            names = "--pattern",
            paramLabel = "PATTERN",
            defaultValue = "square",
            description = "square, or triangular: rows closer, about 15 %% more plants (default: square)")
    private Spacing.Pattern pattern = Spacing.Pattern.SQUARE;

    @Option(
            names = "--waste",
            paramLabel = "PERCENT",
            defaultValue = "0",
            description = "more for losses, 0 to 100 (default: 0)")
    private double waste;

    /// A number of plants and how it was worked out.
    ///
    /// @param worked empty when it was said
    record Amount(int plants, String worked) {}

    /// @throws Refusal when nothing was said, too much, or something that cannot be
    Amount amount(Wording words) {
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
            return new Amount(quantity.get(), "");
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
        return new Amount(plants, worked(words, distance));
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
