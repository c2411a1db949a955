package org.benchleaf.app.cli;

import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import picocli.CommandLine.Option;

/// Where and when a list is planted, as options.
final class ListSiteOptions {
    @Option(names = "--zone", paramLabel = "ZONE", description = "hardiness zone of the site, for example 6a")
    private Optional<String> zone = Optional.empty();

    @Option(names = "--light", paramLabel = "LIGHT", description = "full sun, part sun, part shade or full shade")
    private Optional<String> light = Optional.empty();

    @Option(names = "--soil", paramLabel = "SOIL", description = "dry, medium, moist or wet")
    private Optional<String> soil = Optional.empty();

    @Option(names = "--ship-to", paramLabel = "STATE", description = "where the plants go, for sale rules")
    private Optional<String> shipTo = Optional.empty();

    @Option(names = "--by", paramLabel = "DATE", description = "ready by the week of this date")
    private Optional<String> by = Optional.empty();

    ListSite site(ListSite before) {
        return new ListSite(
                zone.map(text -> ok(ZoneRange.read(text)).coldest()).or(before::zone),
                light.map(text -> ok(Term.read(Exposure.class, text))).or(before::light),
                soil.map(text -> ok(Term.read(Moisture.class, text))).or(before::soil),
                shipTo.map(text -> ok(Destination.read(text))).or(before::shipTo),
                by.map(text -> ok(YearWeek.read(text))).or(before::by));
    }

    private static <T> T ok(Reading<T> reading) {
        return switch (reading) {
            case Reading.Read<T>(T value) -> value;
            case Reading.Refused<T>(Problem problem) -> throw new Refusal(problem);
        };
    }
}
