package org.benchleaf.render;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.ListPack;
import org.benchleaf.render.page.Photo;
import org.benchleaf.render.page.PlantItems;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.page.StockBlock;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.stock.ItemForm;

/// Documents of many plants for tests, easy ones and hard ones, made of the plants of [Samples].
final class DocumentSamples {
    static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 25, 9, 0);

    private DocumentSamples() {}

    static PlantItems items(PlantSheet sheet) {
        List<ItemLine> items = sheet.stock().map(StockBlock::items).orElse(List.of());
        return new PlantItems(sheet.title(), sheet.year(), items, sheet.link());
    }

    /// A list of so many plants in two groups.
    static AvailabilityList availability(int plants) {
        List<PlantItems> shrubs = new ArrayList<>();
        for (int n = 0; n < plants; n++) {
            shrubs.add(items(SampleSheets.sheets().get(n % 5)));
        }
        return new AvailabilityList(
                NOW,
                List.of(
                        new AvailabilityList.Group(Optional.of(LifeForm.SHRUB), shrubs),
                        new AvailabilityList.Group(Optional.empty(), List.of(items(SampleSheets.thymeSheet())))),
                Samples.SHOP);
    }

    static Bulletin.Pick pick(PlantSheet sheet, Optional<Photo> photo) {
        return new Bulletin.Pick(
                sheet.title(),
                sheet.whyNow().orElse(""),
                sheet.year(),
                items(sheet).items(),
                sheet.cautions(),
                sheet.link(),
                photo);
    }

    static Bulletin bulletin() {
        return new Bulletin(
                LocalDate.of(2026, 11, 23),
                LocalDate.of(2026, 11, 29),
                Optional.of(pick(SampleSheets.yewSheet(), Optional.empty())),
                SampleSheets.sheets().stream()
                        .map(sheet -> pick(sheet, Optional.empty()))
                        .toList(),
                SampleSheets.sheets().stream().map(DocumentSamples::items).toList(),
                Samples.SHOP);
    }

    static Bulletin emptyBulletin() {
        return new Bulletin(
                LocalDate.of(2026, 11, 23),
                LocalDate.of(2026, 11, 29),
                Optional.empty(),
                List.of(),
                List.of(),
                Samples.SHOP);
    }

    static ListPack pack() {
        List<ListPack.Line> lines = new ArrayList<>();
        for (PlantSheet sheet : SampleSheets.sheets()) {
            int number = lines.size() + 1;
            boolean priced = number != 5;
            lines.add(new ListPack.Line(
                    number,
                    number == 4 ? Optional.empty() : Optional.of(items(sheet)),
                    Samples.size(number == 2 ? "5-6 ft B&B" : "#3"),
                    number == 2 ? ItemForm.TREE_FORM : ItemForm.REGULAR,
                    number * 25,
                    number == 2 ? 12 : 0,
                    priced ? Optional.of(Money.usDollars("21.50")) : Optional.empty(),
                    priced ? Optional.of(Money.usDollars("12537.50")) : Optional.empty(),
                    number == 1 ? "200 sq ft at 18 in, triangular, 5 % more" : "",
                    number == 3 ? "along the north wall" : ""));
        }
        return new ListPack(
                "Library courtyard, Ashlock",
                NOW.toLocalDate(),
                new ListPack.Site(
                        Optional.of(HardinessZone.of(6, 'a')),
                        Optional.of(Exposure.PART_SHADE),
                        Optional.empty(),
                        Optional.of("US-PA"),
                        YearWeek.read("2027-04-12").toOptional()),
                lines,
                List.of(Money.usDollars("50150.00")),
                SampleSheets.sheets().subList(0, 2),
                Samples.SHOP);
    }
}
