package org.benchleaf.app.cli;

import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PlantAmount;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.plan.Spacing;
import picocli.CommandLine.Option;

/// How many plants: said, or worked out from a bed or a row and a spacing.
final class AmountOptions {
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

    /// @throws Refusal when nothing was said, too much, or something that cannot be
    PlantAmount amount(Wording words) {
        return new PlantAmount.Asked(quantity, area, row, rows, spacing, pattern, waste).amount(words);
    }
}
