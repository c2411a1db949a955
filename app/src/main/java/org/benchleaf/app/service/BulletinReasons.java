package org.benchleaf.app.service;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.Relative;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.StockSize;

/// Proposes the one line that says why a plant is worth buying now: what was seen, how it stands
/// against its size, how it differs from its sister, what it does next. Only what somebody saw or a
/// source states; the seller edits it.
///
/// It holds no state and may be shared between threads.
public final class BulletinReasons {
    /// More than so many are read by nobody.
    private static final int CLAUSES = 3;

    private static final double CM_AN_INCH = 2.54;

    /// What sells best first (common practice, no source).
    private static final List<Condition> ORDER = List.of(
            Condition.IN_BLOOM,
            Condition.FULL_FALL_COLOR,
            Condition.BERRIES_ON,
            Condition.WINTER_STEMS_SHOWING,
            Condition.PLUMING_UP,
            Condition.FLOWER_BUDS_SET,
            Condition.BUD_SET_GOOD,
            Condition.IN_BUD,
            Condition.FALL_COLOR_STARTING,
            Condition.STILL_SOME_FLOWER,
            Condition.WINTER_HUE,
            Condition.FLUSHING,
            Condition.HEAVY,
            Condition.FULL,
            Condition.GOOD_CANES,
            Condition.GOOD_SIDE_GROWTH,
            Condition.CONSISTENT_CROP,
            Condition.CUT_BACK,
            Condition.TRIMMED);

    private final Wording wording;

    public BulletinReasons(Wording wording) {
        this.wording = wording;
    }

    /// @param size the size that was seen, when one was told
    /// @param relatives whom it is compared with
    /// @return a line, or an empty text when nothing is known that would be a reason
    public String propose(
            Sighting seen, PlantRecord plant, Optional<StockSize> size, List<Relative> relatives, LocalDate today) {
        Facts facts = plant.facts();
        List<String> clauses = new ArrayList<>();
        Stream.of(
                        look(seen.conditions(), facts),
                        tall(seen, size, facts),
                        sister(relatives),
                        next(seen.conditions(), facts, today.getMonth()))
                .flatMap(Optional::stream)
                .limit(CLAUSES)
                .forEach(clauses::add);
        return clauses.isEmpty() ? "" : wording.sentence(String.join(wording.text("bulletin.why.and"), clauses));
    }

    private Optional<String> look(Set<Condition> seen, Facts facts) {
        return ORDER.stream().filter(seen::contains).findFirst().map(best -> switch (best) {
            case FULL_FALL_COLOR, FALL_COLOR_STARTING ->
                with("bulletin.why." + best.name(), colors(facts, Attributes.FALL_COLOR));
            case IN_BLOOM, IN_BUD, STILL_SOME_FLOWER ->
                with("bulletin.why." + best.name(), colors(facts, Attributes.FLOWER_COLOR));
            case BERRIES_ON -> with("bulletin.why." + best.name(), colors(facts, Attributes.FRUIT_COLOR));
            case WINTER_STEMS_SHOWING -> with("bulletin.why." + best.name(), colors(facts, Attributes.STEM_COLOR));
            case FLOWER_BUDS_SET, BUD_SET_GOOD ->
                with(
                        "bulletin.why.FLOWER_BUDS_SET",
                        facts.value(Attributes.BLOOM).map(wording::months));
            default -> wording.text("bulletin.why." + best.name());
        });
    }

    /// With the fact where it is known, without it where it is not.
    private String with(String key, Optional<String> fact) {
        return fact.map(known -> wording.text(key + ".known", Map.of("fact", known)))
                .orElseGet(() -> wording.text(key));
    }

    private Optional<String> colors(Facts facts, Attribute<List<PlantColor>> attribute) {
        return facts.value(attribute).filter(colors -> !colors.isEmpty()).map(colors -> wording.colors(colors));
    }

    /// Above the size it is sold as, or how much of its height it has already.
    private Optional<String> tall(Sighting seen, Optional<StockSize> size, Facts facts) {
        if (seen.heightCm().isEmpty()) {
            return Optional.empty();
        }
        int cm = seen.heightCm().get();
        String height = wording.length(new LengthRange(cm, cm));
        if (size.orElse(null) instanceof StockSize.Height sold) {
            boolean above = cm > sold.highInches() * CM_AN_INCH;
            return above
                    ? Optional.of(wording.text(
                            "bulletin.why.above", Map.of("height", height, "size", wording.size(size.get()))))
                    : Optional.of(wording.text("bulletin.why.tall", Map.of("height", height)));
        }
        return facts.value(Attributes.HEIGHT)
                .filter(grown -> cm < grown.highCm())
                .map(grown ->
                        wording.text("bulletin.why.tall.of", Map.of("height", height, "grown", wording.length(grown))))
                .or(() -> Optional.of(wording.text("bulletin.why.tall", Map.of("height", height))));
    }

    private Optional<String> sister(List<Relative> relatives) {
        return relatives.stream()
                .sorted((one, other) -> one.kinship().compareTo(other.kinship()))
                .flatMap(relative -> switch (relative.kinship()) {
                    case SMALLER_SISTER_OF, LARGER_SISTER_OF, IMPROVED_OVER ->
                        Stream.of(wording.text(
                                "bulletin.why." + relative.kinship().name(),
                                Map.of("other", relative.other().toString())));
                    default -> Stream.<String>empty();
                })
                .findFirst();
    }

    /// The next thing it does that is not there yet; an evergreen's leaves when nothing else is known.
    private Optional<String> next(Set<Condition> seen, Facts facts, Month now) {
        return Stream.of(
                        new Coming("bulletin.why.next.flower", facts.value(Attributes.BLOOM)),
                        new Coming("bulletin.why.next.fall", facts.value(Attributes.FALL_MONTHS)),
                        new Coming("bulletin.why.next.fruit", facts.value(Attributes.FRUIT)),
                        new Coming("bulletin.why.next.stem", facts.value(Attributes.STEM_MONTHS)))
                .filter(coming -> coming.months().isPresent() && coming.wait(now) > 0)
                // buds that are set have told of the flowers already
                .filter(coming -> !coming.key().endsWith("flower")
                        || !seen.contains(Condition.FLOWER_BUDS_SET) && !seen.contains(Condition.BUD_SET_GOOD))
                .min((one, other) -> Integer.compare(one.wait(now), other.wait(now)))
                .map(coming -> wording.text(
                        coming.key(),
                        Map.of("months", wording.months(coming.months().orElseThrow()))))
                .or(() -> facts.value(Attributes.FOLIAGE)
                        .filter(Foliage.EVERGREEN::equals)
                        .map(evergreen -> wording.text("bulletin.why.evergreen")));
    }

    /// @param key of its words
    private record Coming(String key, Optional<MonthSet> months) {
        /// Months until it begins; 0 when it is on.
        int wait(Month now) {
            MonthSet set = months.orElseThrow();
            for (int ahead = 0; ahead < 12; ahead++) {
                if (set.contains(now.plus(ahead))) {
                    return ahead;
                }
            }
            return 0;
        }
    }
}
