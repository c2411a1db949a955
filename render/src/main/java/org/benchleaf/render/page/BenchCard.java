package org.benchleaf.render.page;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.code.DigitalLink;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.site.WaterNeed;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// The card that stands on the bench among the plants.
///
/// @param title names
/// @param whyNow why it is worth buying now, one line
/// @param exposure light it does well in; empty when not known
/// @param waterNeed water once established
/// @param moisture soil moisture it likes, shown when the water need is not known; empty when not known
/// @param hardiness zones
/// @param height mature height
/// @param spread mature spread
/// @param year data of the year ring
/// @param cautions what can hurt whom
/// @param notices what a sale rule asks to print beside the plant where the card stands
/// @param stockSize size sold here, when the card is for one item
/// @param form form sold here
/// @param price price each, when the card shows one
/// @param link leads to what is available now
/// @param shop who prints
/// @param photo leads the card when there is one
/// @param trade what its code says in place of the live link, when the shop wants trade numbers in codes
public record BenchCard(
        PlantTitle title,
        Optional<String> whyNow,
        Set<Exposure> exposure,
        Optional<WaterNeed> waterNeed,
        Set<Moisture> moisture,
        Optional<ZoneRange> hardiness,
        Optional<LengthRange> height,
        Optional<LengthRange> spread,
        YearLook year,
        List<Caution> cautions,
        List<String> notices,
        Optional<StockSize> stockSize,
        ItemForm form,
        Optional<Money> price,
        LiveLink link,
        Shop shop,
        Optional<Photo> photo,
        Optional<DigitalLink> trade) {
    public BenchCard {
        exposure = Set.copyOf(exposure);
        moisture = Set.copyOf(moisture);
        cautions = List.copyOf(cautions);
        notices = List.copyOf(notices);
    }

    /// A card whose code is the live link.
    public BenchCard(
            PlantTitle title,
            Optional<String> whyNow,
            Set<Exposure> exposure,
            Optional<WaterNeed> waterNeed,
            Set<Moisture> moisture,
            Optional<ZoneRange> hardiness,
            Optional<LengthRange> height,
            Optional<LengthRange> spread,
            YearLook year,
            List<Caution> cautions,
            List<String> notices,
            Optional<StockSize> stockSize,
            ItemForm form,
            Optional<Money> price,
            LiveLink link,
            Shop shop,
            Optional<Photo> photo) {
        this(
                title,
                whyNow,
                exposure,
                waterNeed,
                moisture,
                hardiness,
                height,
                spread,
                year,
                cautions,
                notices,
                stockSize,
                form,
                price,
                link,
                shop,
                photo,
                Optional.empty());
    }

    /// The same card with another price.
    public BenchCard withPrice(Money other) {
        return new BenchCard(
                title,
                whyNow,
                exposure,
                waterNeed,
                moisture,
                hardiness,
                height,
                spread,
                year,
                cautions,
                notices,
                stockSize,
                form,
                Optional.of(other),
                link,
                shop,
                photo,
                trade);
    }

    /// The same card with a trade number in its code.
    public BenchCard withTrade(DigitalLink number) {
        return new BenchCard(
                title,
                whyNow,
                exposure,
                waterNeed,
                moisture,
                hardiness,
                height,
                spread,
                year,
                cautions,
                notices,
                stockSize,
                form,
                price,
                link,
                shop,
                photo,
                Optional.of(number));
    }
}
