package org.benchleaf.bench;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.stock.ContainerClass;
import org.benchleaf.shared.stock.StockSize;

/// Needs as customers ask them: a zone and three to seven wishes more.
final class SyntheticNeeds {
    private SyntheticNeeds() {}

    static List<Need> needs(int count) {
        List<Need> needs = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            SplittableRandom random = new SplittableRandom(77L * 31 + number);
            List<Wish> wishes = new ArrayList<>();
            wishes.add(new Wish.HardyIn(new HardinessZone(8 + random.nextInt(6))));
            List<Wish> possible = possible(random);
            int more = 3 + random.nextInt(5);
            for (int i = 0; i < more; i++) {
                wishes.add(possible.remove(random.nextInt(possible.size())));
            }
            needs.add(new Need(wishes.stream().map(WeighedWish::of).toList()));
        }
        return needs;
    }

    private static List<Wish> possible(SplittableRandom random) {
        Month month = Month.of(4 + random.nextInt(6));
        return new ArrayList<>(List.of(
                new Wish.GrowsIn(Exposure.values()[random.nextInt(4)]),
                new Wish.NoTallerThan(60 + random.nextInt(400)),
                new Wish.OfForm(Set.of(LifeForm.values()[random.nextInt(9)])),
                new Wish.OfFoliage(Set.of(Foliage.values()[random.nextInt(3)])),
                new Wish.Shows(Season.FALL_COLOR, Optional.empty(), Optional.empty()),
                new Wish.Shows(
                        Season.FLOWER,
                        Optional.of(MonthSet.between(month, month)),
                        Optional.of(ColorFamily.values()[random.nextInt(8)])),
                new Wish.LikesSoil(Moisture.values()[random.nextInt(4)]),
                new Wish.LeftAloneBy(Wish.Browser.DEER),
                new Wish.NativeTo(Optional.of(Region.all().get(random.nextInt(50)))),
                new Wish.ServesAs(Use.values()[random.nextInt(Use.values().length)]),
                new Wish.InStock(
                        10 + random.nextInt(100),
                        Optional.of(new StockSize.Container(ContainerClass.NO_3)),
                        Optional.empty())));
    }
}
