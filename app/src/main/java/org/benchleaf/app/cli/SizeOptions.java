package org.benchleaf.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.need.Wish;
import picocli.CommandLine.Option;

/// How large a plant may or must grow, as options.
final class SizeOptions {
    @Option(names = "--max-height", paramLabel = "LENGTH", description = "grown height at most, for example '5 ft'")
    private Optional<String> maxHeight = Optional.empty();

    @Option(names = "--min-height", paramLabel = "LENGTH", description = "grown height at least")
    private Optional<String> minHeight = Optional.empty();

    @Option(names = "--max-width", paramLabel = "LENGTH", description = "grown spread at most")
    private Optional<String> maxWidth = Optional.empty();

    @Option(names = "--min-width", paramLabel = "LENGTH", description = "grown spread at least")
    private Optional<String> minWidth = Optional.empty();

    @Option(
            names = "--max-height-10yr",
            paramLabel = "LENGTH",
            description = "height at most, ten years after planting")
    private Optional<String> maxHeightTen = Optional.empty();

    @Option(
            names = "--min-height-10yr",
            paramLabel = "LENGTH",
            description = "height at least, ten years after planting")
    private Optional<String> minHeightTen = Optional.empty();

    @Option(names = "--max-width-10yr", paramLabel = "LENGTH", description = "spread at most, ten years after planting")
    private Optional<String> maxWidthTen = Optional.empty();

    @Option(
            names = "--min-width-10yr",
            paramLabel = "LENGTH",
            description = "spread at least, ten years after planting")
    private Optional<String> minWidthTen = Optional.empty();

    /// The wishes given.
    List<Wish> wishes() {
        List<Wish> wishes = new ArrayList<>();
        maxHeight.ifPresent(text -> wishes.add(new Wish.NoTallerThan(most(text))));
        minHeight.ifPresent(text -> wishes.add(new Wish.AtLeastTall(least(text))));
        maxWidth.ifPresent(text -> wishes.add(new Wish.NoWiderThan(most(text))));
        minWidth.ifPresent(text -> wishes.add(new Wish.AtLeastWide(least(text))));
        maxHeightTen.ifPresent(text -> wishes.add(new Wish.AtTenYears(Wish.Bound.NO_TALLER, most(text))));
        minHeightTen.ifPresent(text -> wishes.add(new Wish.AtTenYears(Wish.Bound.AT_LEAST_TALL, least(text))));
        maxWidthTen.ifPresent(text -> wishes.add(new Wish.AtTenYears(Wish.Bound.NO_WIDER, most(text))));
        minWidthTen.ifPresent(text -> wishes.add(new Wish.AtTenYears(Wish.Bound.AT_LEAST_WIDE, least(text))));
        return wishes;
    }

    private static int most(String length) {
        return Given.ok(LengthRange.read(length)).highCm();
    }

    private static int least(String length) {
        return Given.ok(LengthRange.read(length)).lowCm();
    }
}
