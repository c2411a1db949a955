package org.benchleaf.app.cli;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.app.Refusal;
import org.benchleaf.search.need.PostalZones;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Destination;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/// The wishes of a need as options, for those who would rather not write a sentence; one option a kind of wish.
final class NeedOptions {
    private static final List<String> KINDS = Arrays.stream(Wish.class.getPermittedSubclasses())
            .map(Class::getSimpleName)
            .sorted()
            .toList();

    @Option(
            names = "--fix",
            paramLabel = "KIND",
            description = "never give up wishes of this kind, for example NativeTo; may be repeated")
    private List<String> fix = List.of();

    @Option(
            names = "--free",
            paramLabel = "KIND",
            description = "wishes of this kind may be given up, for example HardyIn; may be repeated")
    private List<String> free = List.of();

    @Option(
            names = "--weight",
            paramLabel = "KIND=N",
            description = "how much wishes of this kind count, 0.1 to 10; may be repeated")
    private Map<String, Double> weights = Map.of();

    @Mixin
    private final SiteOptions site = new SiteOptions();

    @Mixin
    private final SizeOptions sizes = new SizeOptions();

    @Mixin
    private final LooksOptions looks = new LooksOptions();

    @Mixin
    private final TaxonOptions taxa = new TaxonOptions();

    @Mixin
    private final StockOptions stock = new StockOptions();

    /// The wishes given.
    ///
    /// @param today the day of shipping when none is given
    /// @param home where the shop ships from
    /// @param zones the zone of each postal code
    List<WeighedWish> wishes(LocalDate today, Optional<Destination> home, PostalZones zones) {
        return Stream.of(site.wishes(zones), sizes.wishes(), looks.wishes(), taxa.wishes(), stock.wishes(today, home))
                .flatMap(List::stream)
                .map(WeighedWish::of)
                .toList();
    }

    /// The wishes of a sentence and of the options as `--fix`, `--free` and `--weight` have them.
    List<WeighedWish> changed(List<WeighedWish> wishes) {
        Stream.of(fix.stream(), free.stream(), weights.keySet().stream())
                .flatMap(kinds -> kinds)
                .filter(kind -> KINDS.stream().noneMatch(kind::equalsIgnoreCase))
                .findFirst()
                .ifPresent(kind -> {
                    throw new Refusal(Problem.of("wish.unknown", kind).with("accepted", String.join(", ", KINDS)));
                });
        return wishes.stream().map(this::changed).toList();
    }

    private WeighedWish changed(WeighedWish wish) {
        String kind = wish.wish().getClass().getSimpleName();
        WeighedWish changed = wish;
        for (Map.Entry<String, Double> weight : weights.entrySet()) {
            if (weight.getKey().equalsIgnoreCase(kind)) {
                if (!(weight.getValue() >= 0.1 && weight.getValue() <= 10)) {
                    throw new Refusal(
                            Problem.of("wish.weight", weight.getValue().toString()));
                }
                changed = changed.weighing(weight.getValue());
            }
        }
        if (free.stream().anyMatch(kind::equalsIgnoreCase)) {
            changed = changed.fixed(false);
        }
        return fix.stream().anyMatch(kind::equalsIgnoreCase) ? changed.fixed(true) : changed;
    }
}
