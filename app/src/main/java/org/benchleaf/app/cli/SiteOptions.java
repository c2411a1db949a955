package org.benchleaf.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.search.need.PostalZones;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.HeatZoneRange;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.GrowthRate;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.site.WaterNeed;
import picocli.CommandLine.Option;

/// What the place is, as options: winters, light, soil, stresses, animals.
final class SiteOptions {
    @Option(names = "--zone", paramLabel = "ZONE", description = "hardy in this zone, for example 6a")
    private Optional<String> zone = Optional.empty();

    @Option(
            names = "--zip",
            paramLabel = "CODE",
            description = "hardy at this postal code; needs a table of zones, see the command zones")
    private Optional<String> zip = Optional.empty();

    @Option(names = "--heat-zone", paramLabel = "N", description = "bears this AHS heat zone, 1 to 12")
    private Optional<Integer> heatZone = Optional.empty();

    @Option(names = "--ph", paramLabel = "PH", description = "grows in soil of this pH, for example 6.5")
    private Optional<String> ph = Optional.empty();

    @Option(names = "--light", paramLabel = "LIGHT", description = "full sun, part sun, part shade or full shade")
    private Optional<String> light = Optional.empty();

    @Option(
            names = "--soil",
            paramLabel = "SOIL",
            description = "dry, medium, moist, wet, sand, loam or clay; may be repeated")
    private List<String> soil = List.of();

    @Option(
            names = "--water",
            paramLabel = "NEED",
            description = "needs at most low, medium or high water once established")
    private Optional<String> water = Optional.empty();

    @Option(names = "--growth", paramLabel = "RATE", description = "grows at least slow, medium or fast")
    private Optional<String> growth = Optional.empty();

    @Option(
            names = "--bears",
            paramLabel = "STRESS",
            description = "drought, wet-feet, salt-in-soil, salt-spray, juglone or compaction; may be repeated")
    private List<Wish.Stress> bears = List.of();

    @Option(names = "--left-alone-by", paramLabel = "ANIMAL", description = "deer or rabbit; may be repeated")
    private List<Wish.Browser> browsers = List.of();

    /// The wishes given.
    ///
    /// @param zones the zone of each postal code
    List<Wish> wishes(PostalZones zones) {
        List<Wish> wishes = new ArrayList<>();
        zone.ifPresent(text -> wishes.add(new Wish.HardyIn(zone(text))));
        zip.ifPresent(text -> wishes.add(
                new Wish.HardyIn(zones.zone(text).orElseThrow(() -> new Refusal(Problem.of("zip.unknown", text))))));
        heatZone.ifPresent(number -> wishes.add(new Wish.BearsHeat(
                Given.ok(HeatZoneRange.read(number.toString())).high())));
        ph.ifPresent(text ->
                wishes.add(new Wish.GrowsAtPh(Given.ok(PhRange.read(text)).lowTenths())));
        light.ifPresent(text -> wishes.add(new Wish.GrowsIn(Given.word(Exposure.class, text))));
        soil.forEach(text -> wishes.add(soil(text)));
        water.ifPresent(text -> wishes.add(new Wish.NeedsAtMost(Given.word(WaterNeed.class, text))));
        growth.ifPresent(text -> wishes.add(new Wish.GrowsAtLeast(Given.word(GrowthRate.class, text))));
        bears.forEach(stress -> wishes.add(new Wish.Bears(stress)));
        browsers.forEach(browser -> wishes.add(new Wish.LeftAloneBy(browser)));
        return wishes;
    }

    private static Wish soil(String text) {
        Optional<Wish> moisture = Term.read(Moisture.class, text).toOptional().map(Wish.LikesSoil::new);
        return moisture.orElseGet(() -> new Wish.LikesTexture(Given.word(SoilTexture.class, text)));
    }

    /// A whole zone means its colder half: what lives there lives in both.
    private static HardinessZone zone(String text) {
        return HardinessZone.read(text)
                .toOptional()
                .orElseGet(() -> Given.ok(ZoneRange.read(text)).coldest());
    }
}
