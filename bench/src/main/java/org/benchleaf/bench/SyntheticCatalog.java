package org.benchleaf.bench;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.Place;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.site.DamageRating;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.Tolerance;
import org.benchleaf.shared.stock.ContainerClass;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// A made-up catalog of real shape: names that are nobody's, facts in the proportions of a nursery's list, one
/// fact in ten missing. The same number gives the same plant in every catalog, so a small one is the head of a
/// large one.
final class SyntheticCatalog {
    private static final Source SOURCE = new Source("made up for a benchmark");
    private static final String[] START = {
        "Ab", "Bel", "Cor", "Dan", "Er", "Fal", "Gen", "Hel", "Ix", "Jun", "Kel", "Lor", "Mar", "Nol", "Or", "Pel",
        "Quil", "Ros", "Sal", "Tam", "Ul", "Vel", "Wis", "Xan", "Yul", "Zel"
    };
    private static final String[] MIDDLE = {"an", "er", "il", "on", "ar", "et", "in", "ol", "un", "is"};
    private static final String[] GENUS_END = {"ia", "um", "us", "ea", "is", "anthus", "opsis", "odendron"};
    private static final String[] SPECIES_END = {"ensis", "iana", "ifolia", "osa", "ata", "ica", "ens", "ella"};
    private static final ContainerClass[] POTS = {
        ContainerClass.NO_1,
        ContainerClass.NO_2,
        ContainerClass.NO_3,
        ContainerClass.NO_5,
        ContainerClass.NO_7,
        ContainerClass.NO_15
    };
    private static final List<Region> REGIONS = Region.all();

    private SyntheticCatalog() {}

    /// The plan that loads plants `from` (included) to `to`, each with one to three lots.
    static ImportPlan plan(CatalogRevision base, int from, int to) {
        List<PlantDraft> plants = new ArrayList<>(to - from);
        List<LotDraft> lots = new ArrayList<>();
        for (int number = from; number < to; number++) {
            SplittableRandom random = new SplittableRandom(0x5EEDL * 31 + number);
            BotanicalName name = name(number, random);
            Place place = new Place("synthetic", number + 2L, Optional.empty());
            plants.add(new PlantDraft(
                    place,
                    Optional.empty(),
                    name,
                    List.of(new CommonName(word(random, "bush"), Locale.ENGLISH)),
                    List.of(),
                    facts(random)));
            int count = 1 + random.nextInt(3);
            for (int lot = 0; lot < count; lot++) {
                lots.add(lot(place, number, lot, name, random));
            }
        }
        return new ImportPlan(
                "synthetic " + from + "-" + to, base, ImportPlan.Rank.OWN, to - from, plants, lots, List.of());
    }

    static BotanicalName name(int number, SplittableRandom random) {
        int genus = number % 1_009;
        String first = START[genus % START.length]
                + MIDDLE[genus / START.length % MIDDLE.length]
                + GENUS_END[genus % GENUS_END.length];
        String second =
                word(random, SPECIES_END[random.nextInt(SPECIES_END.length)]).toLowerCase(Locale.ROOT);
        String cultivar = word(random, "") + " " + roman(number);
        return BotanicalName.ofSpecies(first, second).withCultivar(cultivar);
    }

    private static String roman(int number) {
        StringBuilder letters = new StringBuilder();
        for (int rest = number + 1; rest > 0; rest /= 26) {
            letters.append((char) ('a' + rest % 26));
        }
        return Character.toUpperCase(letters.charAt(0)) + letters.substring(1);
    }

    private static String word(SplittableRandom random, String end) {
        return START[random.nextInt(START.length)]
                + MIDDLE[random.nextInt(MIDDLE.length)]
                + MIDDLE[random.nextInt(MIDDLE.length)]
                + end;
    }

    private static List<Fact<?>> facts(SplittableRandom random) {
        List<Fact<?>> facts = new ArrayList<>();
        LifeForm form = pick(
                random,
                LifeForm.TREE,
                LifeForm.SHRUB,
                LifeForm.SHRUB,
                LifeForm.CONIFER,
                LifeForm.GRASS,
                LifeForm.PERENNIAL,
                LifeForm.PERENNIAL,
                LifeForm.GROUNDCOVER,
                LifeForm.VINE,
                LifeForm.FERN);
        boolean woody = form == LifeForm.TREE || form == LifeForm.SHRUB || form == LifeForm.CONIFER;
        int height = switch (form) {
            case TREE, CONIFER -> 300 + random.nextInt(2_000);
            case SHRUB -> 60 + random.nextInt(300);
            case GROUNDCOVER -> 8 + random.nextInt(30);
            default -> 20 + random.nextInt(120);
        };
        add(facts, random, Attributes.LIFE_FORM, Set.of(form));
        add(facts, random, Attributes.HABIT, Habit.values()[random.nextInt(Habit.values().length)]);
        Foliage foliage = form == LifeForm.CONIFER || random.nextInt(5) == 0
                ? Foliage.EVERGREEN
                : woody ? Foliage.DECIDUOUS : Foliage.HERBACEOUS;
        add(facts, random, Attributes.FOLIAGE, foliage);
        int coldest = 4 + random.nextInt(10);
        add(
                facts,
                random,
                Attributes.HARDINESS,
                new ZoneRange(
                        new HardinessZone(coldest), new HardinessZone(Math.min(25, coldest + 6 + random.nextInt(6)))));
        add(facts, random, Attributes.HEIGHT, new LengthRange(height, height + height / 3));
        add(facts, random, Attributes.SPREAD, new LengthRange(height * 2 / 3 + 1, height + 1));
        add(facts, random, Attributes.EXPOSURE, some(random, Exposure.class, 2));
        add(facts, random, Attributes.MOISTURE, some(random, Moisture.class, 2));
        add(facts, random, Attributes.DROUGHT_TOLERANCE, Tolerance.values()[random.nextInt(4)]);
        add(facts, random, Attributes.WET_TOLERANCE, Tolerance.values()[random.nextInt(4)]);
        add(facts, random, Attributes.SALT_SOIL, Tolerance.values()[random.nextInt(4)]);
        add(facts, random, Attributes.DEER, DamageRating.values()[random.nextInt(4)]);
        add(facts, random, Attributes.FLOWER_COLOR, List.of(color(random)));
        Month bloom = Month.of(3 + random.nextInt(7));
        add(facts, random, Attributes.BLOOM, MonthSet.between(bloom, bloom.plus(random.nextInt(3))));
        if (foliage == Foliage.DECIDUOUS) {
            add(facts, random, Attributes.FALL_COLOR, random.nextInt(3) == 0 ? List.of() : List.of(color(random)));
        }
        add(facts, random, Attributes.WILDLIFE, some(random, Wildlife.class, 2));
        add(facts, random, Attributes.USES, some(random, Use.class, 3));
        add(
                facts,
                random,
                Attributes.NATIVE_STATES,
                new TreeSet<>(List.of(
                        REGIONS.get(random.nextInt(REGIONS.size())),
                        REGIONS.get(random.nextInt(REGIONS.size() / 2)),
                        REGIONS.get(0))));
        return facts;
    }

    private static LotDraft lot(Place place, int number, int lot, BotanicalName name, SplittableRandom random) {
        ContainerClass pot = POTS[(random.nextInt(POTS.length) + lot) % POTS.length];
        Optional<YearWeek> ready =
                random.nextInt(5) == 0 ? Optional.of(new YearWeek(2027, 10 + random.nextInt(12))) : Optional.empty();
        int count = random.nextInt(10) == 0 ? 0 : random.nextInt(400);
        return new LotDraft(
                place,
                "S" + number + "-" + lot,
                Optional.empty(),
                name,
                new StockSize.Container(pot),
                ItemForm.REGULAR,
                "B" + random.nextInt(60),
                count,
                ready,
                Optional.of(Money.usDollars(4 + 6 * pot.ordinal() + "." + (10 + random.nextInt(89)))),
                Set.of(),
                Optional.of(LocalDate.of(2026, 11, 20)),
                Optional.empty());
    }

    private static <T> void add(List<Fact<?>> facts, SplittableRandom random, Attribute<T> attribute, T value) {
        if (random.nextInt(10) != 0) {
            facts.add(new Fact<>(attribute, value, SOURCE, false));
        }
    }

    private static PlantColor color(SplittableRandom random) {
        ColorFamily family = ColorFamily.values()[random.nextInt(ColorFamily.values().length)];
        return new PlantColor(family.term(), family.typical());
    }

    private static <E extends Enum<E>> Set<E> some(SplittableRandom random, Class<E> vocabulary, int most) {
        E[] all = vocabulary.getEnumConstants();
        EnumSet<E> chosen = EnumSet.noneOf(vocabulary);
        for (int i = 0; i <= random.nextInt(most); i++) {
            chosen.add(all[random.nextInt(all.length)]);
        }
        return chosen;
    }

    @SafeVarargs
    private static <T> T pick(SplittableRandom random, T... from) {
        return from[random.nextInt(from.length)];
    }
}
