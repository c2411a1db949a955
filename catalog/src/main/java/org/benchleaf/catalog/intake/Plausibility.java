package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.LifeForm;

/// Asks whether the facts of one row can be true together. General botany, from memory; each rule says what it looks
/// at.
final class Plausibility {
    /// Conifers that drop their needles.
    private static final Set<String> BARE_CONIFERS =
            Set.of("Larix", "Taxodium", "Metasequoia", "Pseudolarix", "Glyptostrobus", "Ginkgo");

    /// States that lie wholly in zone 6b or colder (USDA Plant Hardiness Zone Map 2023, from memory): a plant native
    /// there lives through 0 °F.
    private static final Set<Region> COLD_STATES = Set.of(
            new Region("US-ME"),
            new Region("US-MN"),
            new Region("US-ND"),
            new Region("US-NH"),
            new Region("US-SD"),
            new Region("US-VT"),
            new Region("US-WI"));

    private static final HardinessZone AT_0_F = HardinessZone.of(7, 'a');
    private static final int VINE_CM = 91; // 3 ft

    private final BotanicalName name;
    private final Facts facts;
    private final List<Doubt> doubts = new ArrayList<>();

    private Plausibility(BotanicalName name, Facts facts) {
        this.name = name;
        this.facts = facts;
    }

    static List<Doubt> doubts(BotanicalName name, Facts facts) {
        Plausibility plausibility = new Plausibility(name, facts);
        plausibility.tenYears(Attributes.HEIGHT_10YR, Attributes.HEIGHT);
        plausibility.tenYears(Attributes.SPREAD_10YR, Attributes.SPREAD);
        plausibility.fallColor();
        plausibility.conifer();
        if (!plausibility.annual()) {
            plausibility.cold();
        }
        plausibility.vine();
        return plausibility.doubts;
    }

    /// Larger after ten years than when grown.
    private void tenYears(Attribute<LengthRange> early, Attribute<LengthRange> mature) {
        Optional<LengthRange> young = facts.value(early);
        Optional<LengthRange> grown = facts.value(mature);
        if (young.isPresent()
                && grown.isPresent()
                && young.get().highCm() > grown.get().highCm()) {
            doubt(
                    early,
                    Problem.of("size.ten-years", young.get().toString())
                            .with("mature", grown.get().toString()),
                    false);
        }
    }

    /// Fall color on an evergreen, which neither its winter foliage nor the text about it explains.
    private void fallColor() {
        boolean evergreen = facts.value(Attributes.FOLIAGE)
                .filter(Foliage.EVERGREEN::equals)
                .isPresent();
        boolean colored = facts.value(Attributes.FALL_COLOR)
                .filter(colors -> !colors.isEmpty())
                .isPresent();
        boolean explained = facts.value(Attributes.WINTER_FOLIAGE_COLOR).isPresent()
                || mentionsSeason(Attributes.DESCRIPTION)
                || mentionsSeason(Attributes.SELLING_NOTE);
        if (evergreen && colored && !explained) {
            String colors = facts.fact(Attributes.FALL_COLOR).orElseThrow().text();
            doubt(Attributes.FALL_COLOR, Problem.of("fall-color.evergreen", colors), false);
        }
    }

    private boolean mentionsSeason(Attribute<String> text) {
        return facts.value(text)
                .filter(words -> words.matches("(?is).*\\b(fall|autumn|winter|cold)\\b.*"))
                .isPresent();
    }

    /// A conifer without leaves in winter that is none of the few which drop them.
    private void conifer() {
        boolean conifer = facts.value(Attributes.LIFE_FORM)
                .filter(forms -> forms.contains(LifeForm.CONIFER))
                .isPresent();
        Optional<Foliage> foliage = facts.value(Attributes.FOLIAGE);
        boolean bare = foliage.filter(leaves -> leaves == Foliage.DECIDUOUS || leaves == Foliage.HERBACEOUS)
                .isPresent();
        if (conifer && bare && !BARE_CONIFERS.contains(name.genus())) {
            doubt(
                    Attributes.FOLIAGE,
                    Problem.of("foliage.conifer", foliage.orElseThrow().term()).with("genus", name.genus()),
                    true);
        }
    }

    /// The hardiness of a plant that no winter meets: its lowest temperature is that of germination.
    private boolean annual() {
        Optional<ZoneRange> zones = facts.value(Attributes.HARDINESS);
        boolean annual = facts.value(Attributes.LIFE_FORM)
                .filter(forms -> forms.contains(LifeForm.ANNUAL))
                .isPresent();
        if (annual && zones.isPresent()) {
            doubt(
                    Attributes.HARDINESS,
                    Problem.of("hardiness.annual", zones.get().toString()),
                    true);
        }
        return annual;
    }

    /// Less hardy than the winters of its home.
    private void cold() {
        Optional<ZoneRange> zones = facts.value(Attributes.HARDINESS);
        Optional<Region> home = facts.value(Attributes.NATIVE_STATES).stream()
                .flatMap(Set::stream)
                .filter(COLD_STATES::contains)
                .sorted()
                .findFirst();
        if (home.isPresent()
                && zones.filter(range -> range.coldest().compareTo(AT_0_F) >= 0).isPresent()) {
            doubt(
                    Attributes.HARDINESS,
                    Problem.of("hardiness.native", zones.orElseThrow().toString())
                            .with("state", home.get().name()),
                    true);
        }
    }

    /// A climber that does not reach 3 ft. Herbs that climb a little may be short; woody ones are not.
    private void vine() {
        Set<LifeForm> forms = facts.value(Attributes.LIFE_FORM).orElse(Set.of());
        Optional<LengthRange> height = facts.value(Attributes.HEIGHT);
        boolean woody = !forms.contains(LifeForm.PERENNIAL) && !forms.contains(LifeForm.ANNUAL);
        if (forms.contains(LifeForm.VINE)
                && !forms.contains(LifeForm.GROUNDCOVER)
                && height.filter(span -> span.highCm() < VINE_CM).isPresent()) {
            doubt(
                    Attributes.HEIGHT,
                    Problem.of("height.vine", height.orElseThrow().toString()),
                    woody);
        }
    }

    private void doubt(Attribute<?> attribute, Problem problem, boolean contradicts) {
        doubts.add(new Doubt(attribute, problem, contradicts));
    }
}
