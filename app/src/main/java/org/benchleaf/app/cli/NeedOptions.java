package org.benchleaf.app.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.search.need.PostalZones;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.HeatZoneRange;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.GrowthRate;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Sex;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.site.WaterNeed;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine.Option;

/// The wishes of a need as options, for those who would rather not write a sentence; one option a kind of wish.
final class NeedOptions {
    private static final List<String> KINDS = Arrays.stream(Wish.class.getPermittedSubclasses())
            .map(Class::getSimpleName)
            .sorted()
            .toList();

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

    @Option(
            names = "--water",
            paramLabel = "NEED",
            description = "needs at most low, medium or high water once established")
    private Optional<String> water = Optional.empty();

    @Option(names = "--growth", paramLabel = "RATE", description = "grows at least slow, medium or fast")
    private Optional<String> growth = Optional.empty();

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

    @Option(names = "--species", paramLabel = "SPECIES", description = "of this species, for example 'Acer rubrum'")
    private Optional<String> species = Optional.empty();

    @Option(names = "--not-species", paramLabel = "SPECIES", description = "not of this species; may be repeated")
    private List<String> notSpecies = List.of();

    @Option(names = "--sex", paramLabel = "SEX", description = "male, female, perfect, monoecious or dioecious")
    private Optional<String> sex = Optional.empty();

    @Option(names = "--fruits-alone", description = "fruits without a partner")
    private boolean fruitsAlone;

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

    @Option(names = "--light", paramLabel = "LIGHT", description = "full sun, part sun, part shade or full shade")
    private Optional<String> light = Optional.empty();

    @Option(
            names = "--soil",
            paramLabel = "SOIL",
            description = "dry, medium, moist, wet, sand, loam or clay; may be repeated")
    private List<String> soil = List.of();

    @Option(
            names = "--bears",
            paramLabel = "STRESS",
            description = "drought, wet-feet, salt-in-soil, salt-spray, juglone or compaction; may be repeated")
    private List<Wish.Stress> bears = List.of();

    @Option(names = "--left-alone-by", paramLabel = "ANIMAL", description = "deer or rabbit; may be repeated")
    private List<Wish.Browser> browsers = List.of();

    @Option(names = "--max-height", paramLabel = "LENGTH", description = "grown height at most, for example '5 ft'")
    private Optional<String> maxHeight = Optional.empty();

    @Option(names = "--min-height", paramLabel = "LENGTH", description = "grown height at least")
    private Optional<String> minHeight = Optional.empty();

    @Option(names = "--max-width", paramLabel = "LENGTH", description = "grown spread at most")
    private Optional<String> maxWidth = Optional.empty();

    @Option(
            names = "--form",
            paramLabel = "FORMS",
            description =
                    "tree, shrub, conifer, grass, fern, perennial, groundcover, vine, bulb; several parted by commas")
    private Optional<String> forms = Optional.empty();

    @Option(
            names = "--foliage",
            paramLabel = "FOLIAGE",
            description = "evergreen, semi-evergreen, deciduous or herbaceous; several parted by commas")
    private Optional<String> foliage = Optional.empty();

    @Option(names = "--habit", paramLabel = "HABIT", description = "outline, for example columnar")
    private Optional<String> habit = Optional.empty();

    @Option(
            names = "--shows",
            paramLabel = "WHAT[:COLOR[:MONTHS]]",
            description = "flower, foliage, fall color, fruit or stem; for example 'flower:white:Jun'; may be repeated")
    private List<String> shows = List.of();

    @Option(names = "--fragrant", description = "scents the air")
    private boolean fragrant;

    @Option(
            names = "--feeds",
            paramLabel = "WHAT",
            description = "nectar, pollen, larval host, bird food, cover or nesting; may be repeated")
    private List<String> feeds = List.of();

    @Option(
            names = "--native",
            paramLabel = "STATE",
            arity = "0..1",
            fallbackValue = "",
            description = "native to this state or province; without one, to the United States or Canada")
    private Optional<String> nativeTo = Optional.empty();

    @Option(
            names = "--use",
            paramLabel = "USE",
            description = "hedge, screen, massing, rain garden ...; may be repeated")
    private List<String> uses = List.of();

    @Option(
            names = "--safe-for",
            paramLabel = "WHOM",
            description = "no known caution for dogs, cats, horses, children ...; may be repeated")
    private List<String> safeFor = List.of();

    @Option(
            names = "--ship-to",
            paramLabel = "STATE",
            description =
                    "may be sold and shipped there, for example PA or 'Suffolk County, NY'; sale rules are judged")
    private Optional<String> shipTo = Optional.empty();

    @Option(
            names = "--ship-on",
            paramLabel = "DATE",
            description = "the day of shipping (default: the week of --by, else today)")
    private Optional<String> shipOn = Optional.empty();

    @Option(names = "--genus", paramLabel = "GENUS", description = "of this genus")
    private Optional<String> genus = Optional.empty();

    @Option(names = "--not-genus", paramLabel = "GENUS", description = "not of this genus; may be repeated")
    private List<String> notGenus = List.of();

    @Option(names = "--count", paramLabel = "N", description = "so many in stock")
    private Optional<Integer> count = Optional.empty();

    @Option(names = "--size", paramLabel = "SIZE", description = "in this size, for example '#3'")
    private Optional<StockSize> size = Optional.empty();

    @Option(names = "--by", paramLabel = "DATE", description = "ready by the week of this date")
    private Optional<String> by = Optional.empty();

    @Option(names = "--max-price", paramLabel = "PRICE", description = "at most this a piece, in dollars")
    private Optional<String> maxPrice = Optional.empty();

    /// The wishes given, in the order of the options.
    ///
    /// @param today the day of shipping when none is given
    /// @param home where the shop ships from
    /// @param zones the zone of each postal code
    List<WeighedWish> wishes(LocalDate today, Optional<Destination> home, PostalZones zones) {
        List<Wish> wishes = new ArrayList<>();
        zone.ifPresent(text -> wishes.add(new Wish.HardyIn(zone(text))));
        zip.ifPresent(text -> wishes.add(
                new Wish.HardyIn(zones.zone(text).orElseThrow(() -> new Refusal(Problem.of("zip.unknown", text))))));
        heatZone.ifPresent(zone -> wishes.add(
                new Wish.BearsHeat(ok(HeatZoneRange.read(zone.toString())).high())));
        ph.ifPresent(
                text -> wishes.add(new Wish.GrowsAtPh(ok(PhRange.read(text)).lowTenths())));
        light.ifPresent(text -> wishes.add(new Wish.GrowsIn(ok(Term.read(Exposure.class, text)))));
        soil.forEach(text -> wishes.add(soil(text)));
        water.ifPresent(text -> wishes.add(new Wish.NeedsAtMost(ok(Term.read(WaterNeed.class, text)))));
        growth.ifPresent(text -> wishes.add(new Wish.GrowsAtLeast(ok(Term.read(GrowthRate.class, text)))));
        bears.forEach(stress -> wishes.add(new Wish.Bears(stress)));
        browsers.forEach(browser -> wishes.add(new Wish.LeftAloneBy(browser)));
        maxHeight.ifPresent(text ->
                wishes.add(new Wish.NoTallerThan(ok(LengthRange.read(text)).highCm())));
        minHeight.ifPresent(text ->
                wishes.add(new Wish.AtLeastTall(ok(LengthRange.read(text)).lowCm())));
        maxWidth.ifPresent(text ->
                wishes.add(new Wish.NoWiderThan(ok(LengthRange.read(text)).highCm())));
        minWidth.ifPresent(text ->
                wishes.add(new Wish.AtLeastWide(ok(LengthRange.read(text)).lowCm())));
        maxHeightTen.ifPresent(text -> wishes.add(atTenYears(Wish.Bound.NO_TALLER, text)));
        minHeightTen.ifPresent(text -> wishes.add(atTenYears(Wish.Bound.AT_LEAST_TALL, text)));
        maxWidthTen.ifPresent(text -> wishes.add(atTenYears(Wish.Bound.NO_WIDER, text)));
        minWidthTen.ifPresent(text -> wishes.add(atTenYears(Wish.Bound.AT_LEAST_WIDE, text)));
        forms.ifPresent(text -> wishes.add(new Wish.OfForm(some(ok(Term.readSet(LifeForm.class, text)), text))));
        foliage.ifPresent(text -> wishes.add(new Wish.OfFoliage(some(ok(Term.readSet(Foliage.class, text)), text))));
        habit.ifPresent(text -> wishes.add(new Wish.OfHabit(ok(Term.read(Habit.class, text)))));
        shows.forEach(text -> wishes.add(shows(text)));
        if (fragrant) {
            wishes.add(new Wish.Fragrant());
        }
        feeds.forEach(text -> wishes.add(new Wish.Feeds(ok(Term.read(Wildlife.class, text)))));
        nativeTo.ifPresent(text ->
                wishes.add(new Wish.NativeTo(text.isEmpty() ? Optional.empty() : Optional.of(ok(Region.read(text))))));
        uses.forEach(text -> wishes.add(new Wish.ServesAs(ok(Term.read(Use.class, text)))));
        safeFor.forEach(text -> wishes.add(new Wish.SafeFor(ok(Term.read(Creature.class, text)))));
        shipTo.ifPresent(
                text -> wishes.add(new Wish.ShipTo(new Shipment(ok(Destination.read(text)), shipDay(today), home))));
        genus.ifPresent(text -> wishes.add(new Wish.OfGenus(text)));
        notGenus.forEach(text -> wishes.add(new Wish.NotOfGenus(text)));
        species.map(NeedOptions::species).ifPresent(name -> wishes.add(new Wish.OfSpecies(name[0], name[1])));
        notSpecies.stream()
                .map(NeedOptions::species)
                .forEach(name -> wishes.add(new Wish.NotOfSpecies(name[0], name[1])));
        sex.ifPresent(text -> wishes.add(new Wish.OfSex(ok(Term.read(Sex.class, text)))));
        if (fruitsAlone) {
            wishes.add(new Wish.FruitsAlone());
        }
        stock().ifPresent(wishes::add);
        maxPrice.ifPresent(text -> wishes.add(new Wish.AtMostPrice(ok(Money.read(text, Currency.getInstance("USD"))))));
        return wishes.stream().map(WeighedWish::of).toList();
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

    private static Wish atTenYears(Wish.Bound bound, String length) {
        LengthRange range = ok(LengthRange.read(length));
        boolean most = bound == Wish.Bound.NO_TALLER || bound == Wish.Bound.NO_WIDER;
        return new Wish.AtTenYears(bound, most ? range.highCm() : range.lowCm());
    }

    /// Genus and epithet, whatever hybrid mark or rank stands between or behind.
    private static String[] species(String text) {
        BotanicalName name = NameReader.read(text)
                .known()
                .filter(known -> known.species().isPresent())
                .orElseThrow(() -> new Refusal(Problem.of("species.unread", text)));
        return new String[] {name.genus(), name.species().orElseThrow().text()};
    }

    private LocalDate shipDay(LocalDate today) {
        return shipOn.map(NeedOptions::day)
                .or(() -> by.map(text -> ok(YearWeek.read(text)).monday()))
                .orElse(today);
    }

    static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException noDay) {
            throw new Refusal(Problem.of("rules.day", text));
        }
    }

    private Optional<Wish> stock() {
        if (count.isEmpty() && size.isEmpty() && by.isEmpty()) {
            return Optional.empty();
        }
        int wanted = count.orElse(1);
        if (wanted < 1) {
            throw new Refusal(Problem.of("count.negative", Integer.toString(wanted)));
        }
        return Optional.of(new Wish.InStock(wanted, size, by.map(text -> ok(YearWeek.read(text)))));
    }

    private static Wish soil(String text) {
        Optional<Wish> moisture = Term.read(Moisture.class, text).toOptional().map(Wish.LikesSoil::new);
        return moisture.orElseGet(() -> new Wish.LikesTexture(ok(Term.read(SoilTexture.class, text))));
    }

    private static Wish shows(String text) {
        String[] parts = text.split(":", 3);
        Season season = ok(Term.read(Season.class, parts[0]));
        Optional<ColorFamily> color = parts.length < 2 || parts[1].isBlank()
                ? Optional.empty()
                : Optional.of(ColorFamily.ofWord(parts[1])
                        .orElseThrow(() -> new Refusal(Problem.of("color.unknown", parts[1]))));
        Optional<MonthSet> months = parts.length < 3 ? Optional.empty() : Optional.of(ok(MonthSet.read(parts[2])));
        return new Wish.Shows(season, months, color);
    }

    /// A whole zone means its colder half: what lives there lives in both.
    private static HardinessZone zone(String text) {
        return HardinessZone.read(text)
                .toOptional()
                .orElseGet(() -> ok(ZoneRange.read(text)).coldest());
    }

    private static <T> Set<T> some(Set<T> words, String text) {
        if (words.isEmpty()) {
            throw new Refusal(Problem.of("text.empty", text));
        }
        return words;
    }

    private static <T> T ok(Reading<T> reading) {
        return switch (reading) {
            case Reading.Read<T>(T value) -> value;
            case Reading.Refused<T>(Problem problem) -> throw new Refusal(problem);
        };
    }
}
