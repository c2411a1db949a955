package org.benchleaf.render;

import java.net.URI;
import java.util.List;
import java.util.Optional;
import org.benchleaf.render.page.Shop;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.benchleaf.shared.name.Infraspecific;
import org.benchleaf.shared.name.Rank;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.stock.StockSize;

/// What pages of tests are made of. Facts of the plants are from memory.
final class Samples {
    static final URI BASE = URI.create("https://wrenfold.example");
    static final Shop SHOP = new Shop("Wrenfold Growers", "Ashlock, Pennsylvania · wrenfold.example");
    static final Source MEMORY = Source.FROM_MEMORY;
    static final Source USDA = new Source("USDA PLANTS");
    static final Source RUTGERS = new Source("Rutgers NJAES E271");

    private Samples() {}

    static final BotanicalName ITEA =
            BotanicalName.ofSpecies("Itea", "virginica").withCultivar("Henry's Garnet");
    static final BotanicalName SUMMER_SNOWFLAKE =
            below("Viburnum", "plicatum", Rank.FORM, "tomentosum").withCultivar("Summer Snowflake");
    static final BotanicalName GOLDSTURM =
            below("Rudbeckia", "fulgida", Rank.VARIETY, "sullivantii").withCultivar("Goldsturm");
    static final BotanicalName TULIP_TREE = BotanicalName.ofSpecies("Liriodendron", "tulipifera");
    static final BotanicalName THYME =
            BotanicalName.ofSpecies("Thymus", "serpyllum").withCultivar("Pink Chintz");
    static final BotanicalName YEW = BotanicalName.ofGenus("Taxus")
            .withSpecies(new Epithet(HybridMark.HYBRID, "media"))
            .withCultivar("Hicksii");

    private static BotanicalName below(String genus, String species, Rank rank, String epithet) {
        BotanicalName name = BotanicalName.ofSpecies(genus, species);
        return new BotanicalName(
                name.genusMark(),
                name.genus(),
                name.species(),
                Optional.of(new Infraspecific(rank, Epithet.of(epithet))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static PlantKey key(long serial) {
        return PlantKey.ofSerial(serial);
    }

    static Optional<LengthRange> length(String text) {
        return LengthRange.read(text).toOptional();
    }

    static Optional<ZoneRange> zones(String text) {
        return ZoneRange.read(text).toOptional();
    }

    static List<PlantColor> colors(String text) {
        return PlantColor.readList(text).orThrow();
    }

    static Optional<Show> show(String colors, String months) {
        return Optional.of(new Show(colors(colors), months(months)));
    }

    static MonthSet months(String text) {
        return MonthSet.read(text).orThrow();
    }

    static List<Caution> cautions(String text) {
        return Caution.readList(text).orThrow();
    }

    static Optional<StockSize> size(String text) {
        return StockSize.read(text).toOptional();
    }

    static YearLook iteaYear() {
        return new YearLook(
                show("white #F3F1E6", "Jun-Jul"),
                Optional.of(Foliage.DECIDUOUS),
                List.of(),
                colors("green #5E7F4B"),
                colors("crimson #9C2233; orange #C8602B; burgundy #6A1F33"),
                Optional.of(months("Oct-Nov")),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    static YearLook yewYear() {
        return new YearLook(
                Optional.empty(),
                Optional.of(Foliage.EVERGREEN),
                colors("yellow-green #9DB25A"),
                colors("dark green #35553A"),
                List.of(),
                Optional.empty(),
                List.of(),
                show("red #B8312F", "Sep-Nov"),
                Optional.empty());
    }
}
