package org.benchleaf.shared.need;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.GrowthRate;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Sex;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.SoilTexture;
import org.benchleaf.shared.site.WaterNeed;
import org.benchleaf.shared.stock.StockSize;

/// One criterion of what a customer asks. Sealed: a new wish does not compile until it is judged and worded.
public sealed interface Wish {
    /// Lives through the winters of the site, and its summers.
    record HardyIn(HardinessZone zone) implements Wish {}

    /// Bears the heat of the site: its AHS heat zone, 1 to 12.
    record BearsHeat(int zone) implements Wish {
        public BearsHeat {
            if (zone < 1 || zone > 12) {
                throw new IllegalArgumentException("a heat zone is 1 to 12; got " + zone);
            }
        }
    }

    /// Does well in this light.
    record GrowsIn(Exposure exposure) implements Wish {}

    /// Does well in soil this wet.
    record LikesSoil(Moisture moisture) implements Wish {}

    /// Does well in this texture of soil.
    record LikesTexture(SoilTexture texture) implements Wish {}

    /// Does well at this acidity of the soil: pH in tenths, 30 to 100.
    record GrowsAtPh(int tenths) implements Wish {
        public GrowsAtPh {
            if (tenths < 30 || tenths > 100) {
                throw new IllegalArgumentException("pH is 3.0 to 10.0; got tenths " + tenths);
            }
        }
    }

    /// Once established, needs at most this much water.
    record NeedsAtMost(WaterNeed water) implements Wish {}

    /// Grows at least this fast.
    record GrowsAtLeast(GrowthRate rate) implements Wish {}

    /// Bears a stress of the site at least fairly well.
    record Bears(Stress stress) implements Wish {}

    /// Damaged at most seldom by this animal.
    record LeftAloneBy(Browser browser) implements Wish {}

    /// Mature height at most this, in cm.
    record NoTallerThan(int cm) implements Wish {}

    /// Mature height at least this, in cm.
    record AtLeastTall(int cm) implements Wish {}

    /// Mature spread at most this, in cm.
    record NoWiderThan(int cm) implements Wish {}

    /// Mature spread at least this, in cm.
    record AtLeastWide(int cm) implements Wish {}

    /// Ten years after planting, within this bound, in cm.
    record AtTenYears(Bound bound, int cm) implements Wish {}

    /// One of these kinds of plant; at least one.
    record OfForm(Set<LifeForm> forms) implements Wish {
        public OfForm {
            forms = Set.copyOf(forms);
        }
    }

    /// Keeps its leaves, or loses them, in one of these ways.
    record OfFoliage(Set<Foliage> foliage) implements Wish {
        public OfFoliage {
            foliage = Set.copyOf(foliage);
        }
    }

    /// Has this outline.
    record OfHabit(Habit habit) implements Wish {}

    /// Is worth looking at for this, in at least one of these months, in this color (each when given).
    record Shows(Season season, Optional<MonthSet> months, Optional<ColorFamily> color) implements Wish {}

    /// Is worth looking at from December to February, for whatever: stems, fruit or leaves that stay, flowers.
    record ShowsInWinter() implements Wish {}

    /// Scents the air.
    record Fragrant() implements Wish {}

    /// Gives this to animals.
    record Feeds(Wildlife wildlife) implements Wish {}

    /// Grows wild in this state or province; without one, anywhere in the United States or Canada.
    record NativeTo(Optional<Region> region) implements Wish {}

    /// Serves this purpose.
    record ServesAs(Use use) implements Wish {}

    /// Has no known caution for these.
    record SafeFor(Creature creature) implements Wish {}

    /// May be sold and shipped there on that day, as far as the lists of sale rules say.
    record ShipTo(Shipment shipment) implements Wish {}

    /// Is of this family, such as `Rosaceae`; capital first.
    record OfFamily(String family) implements Wish {}

    /// Is not of this family; capital first.
    record NotOfFamily(String family) implements Wish {}

    /// Nobody's right stands in the way of propagating it, or of calling it so.
    record FreeOf(Right right) implements Wish {}

    /// Is not of this genus; capital first.
    record NotOfGenus(String genus) implements Wish {}

    /// Is of this genus; capital first.
    record OfGenus(String genus) implements Wish {}

    /// Is of this species, whatever the cultivar; epithet without a hybrid mark.
    record OfSpecies(String genus, String epithet) implements Wish {}

    /// Is not of this species; epithet without a hybrid mark.
    record NotOfSpecies(String genus, String epithet) implements Wish {}

    /// Is named by published lists as a plant to grow instead of another.
    ///
    /// @param original the plant replaced
    /// @param publishers how many publishers name it, 1 or more, by what they name; a plant has what is said of the
    ///     lowest taxon that it belongs to
    record NamedInstead(TaxonName original, Map<TaxonName, Integer> publishers) implements Wish {
        public NamedInstead {
            publishers = Map.copyOf(publishers);
        }

        /// How many publishers name such a plant; 0 or more.
        public int publishersOf(BotanicalName plant) {
            return TaxonName.of(plant).lineage().stream()
                    .filter(publishers::containsKey)
                    .findFirst()
                    .map(publishers::get)
                    .orElse(0);
        }
    }

    /// Has these flowers: `male` for a plant that must not fruit, `female` for one that must.
    record OfSex(Sex sex) implements Wish {}

    /// Fruits without a partner.
    record FruitsAlone() implements Wish {}

    /// To be had: so many, in that size, by that week (each when given).
    ///
    /// @param count 1 or more
    record InStock(int count, Optional<StockSize> size, Optional<YearWeek> by) implements Wish {
        public InStock {
            if (count < 1) {
                throw new IllegalArgumentException("a count is 1 or more; got " + count);
            }
        }
    }

    /// Costs at most this a piece, in the size asked for.
    record AtMostPrice(Money price) implements Wish {}

    /// One end of a size.
    enum Bound {
        NO_TALLER,
        AT_LEAST_TALL,
        NO_WIDER,
        AT_LEAST_WIDE
    }

    /// A stress of the site that a plant bears or not.
    enum Stress {
        DROUGHT,
        WET_FEET,
        SALT_IN_SOIL,
        SALT_SPRAY,
        JUGLONE,
        COMPACTION
    }

    /// A right that somebody may hold in a plant.
    enum Right {
        /// To propagate it.
        PATENT,
        /// To sell under its name.
        MARK
    }

    /// An animal that eats plants.
    enum Browser {
        DEER,
        RABBIT
    }
}
