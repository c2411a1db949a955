package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.render.page.FactKind;
import org.benchleaf.render.page.FactValue;
import org.benchleaf.render.page.PageFact;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HeatZoneRange;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.measure.ZoneRange;

/// Which attributes of the catalog a page shows as facts, and in which kind of value.
final class PageFacts {
    private static final List<Shown<?>> SHOWN = List.of(
            terms(Attributes.LIFE_FORM),
            term(Attributes.HABIT),
            term(Attributes.FOLIAGE),
            value(Attributes.HARDINESS, (ZoneRange zones) -> new FactValue.Zones(zones)),
            value(Attributes.HEAT_ZONE, (HeatZoneRange zones) -> new FactValue.HeatZones(zones)),
            length(Attributes.HEIGHT),
            length(Attributes.SPREAD),
            length(Attributes.HEIGHT_10YR),
            length(Attributes.SPREAD_10YR),
            term(Attributes.GROWTH_RATE),
            terms(Attributes.EXPOSURE),
            terms(Attributes.MOISTURE),
            term(Attributes.WATER_NEED),
            terms(Attributes.SOIL_TEXTURE),
            value(Attributes.SOIL_PH, (PhRange acidity) -> new FactValue.Acidity(acidity)),
            term(Attributes.DROUGHT_TOLERANCE),
            term(Attributes.WET_TOLERANCE),
            term(Attributes.SALT_SOIL),
            term(Attributes.SALT_SPRAY),
            term(Attributes.COMPACTION),
            term(Attributes.JUGLONE),
            term(Attributes.DEER),
            term(Attributes.RABBIT),
            colors(Attributes.FLOWER_COLOR),
            months(Attributes.BLOOM),
            term(Attributes.FRAGRANCE),
            colors(Attributes.SPRING_FOLIAGE_COLOR),
            colors(Attributes.FOLIAGE_COLOR),
            colors(Attributes.FALL_COLOR),
            months(Attributes.FALL_MONTHS),
            colors(Attributes.WINTER_FOLIAGE_COLOR),
            colors(Attributes.FRUIT_COLOR),
            months(Attributes.FRUIT),
            colors(Attributes.STEM_COLOR),
            months(Attributes.STEM_MONTHS),
            terms(Attributes.WILDLIFE),
            terms(Attributes.USES),
            text(Attributes.NATIVE_RANGE),
            value(Attributes.NATIVE_STATES, (java.util.Set<Region> regions) -> new FactValue.Regions(regions)),
            term(Attributes.SEX),
            term(Attributes.SELF_FERTILE),
            text(Attributes.POLLINATION_GROUP),
            value(Attributes.POLLINATION_PARTNERS, names -> new FactValue.Text(String.join("; ", names))),
            text(Attributes.RIGHTS));

    /// Attributes with a place of their own on the page, or shown within another fact; what a plant is known for
    /// and how widely it is grown put answers in order and are told with their reasons.
    private static final List<Attribute<?>> ELSEWHERE = List.of(
            Attributes.FAMILY,
            Attributes.STEM_NOTE,
            Attributes.KNOWN_FOR,
            Attributes.GROWN,
            Attributes.CAUTIONS,
            Attributes.RELATIVES,
            Attributes.SELLING_NOTE,
            Attributes.DESCRIPTION,
            Attributes.PHOTOGRAPHS);

    private PageFacts() {}

    /// @param others what sources state that are not chosen, for a page that was asked for them
    static List<PageFact> of(Facts facts, List<Fact<?>> others) {
        List<PageFact> page = new ArrayList<>();
        for (Shown<?> shown : SHOWN) {
            shown.from(facts, others).ifPresent(page::add);
        }
        return List.copyOf(page);
    }

    /// Every attribute that has a place on the page; a test holds it against the catalog's list.
    static List<Attribute<?>> placed() {
        List<Attribute<?>> placed = new ArrayList<>(ELSEWHERE);
        SHOWN.forEach(shown -> placed.add(shown.attribute()));
        return placed;
    }

    private record Shown<T>(Attribute<T> attribute, Function<T, FactValue> change) {
        private static final Map<String, FactKind> KINDS = kinds();

        Optional<PageFact> from(Facts facts, List<Fact<?>> others) {
            return facts.fact(attribute).map(fact -> page(fact, others));
        }

        private PageFact page(Fact<T> fact, List<Fact<?>> others) {
            return new PageFact(
                    kind(),
                    change.apply(fact.value()),
                    Optional.of(fact.source()),
                    fact.inherited(),
                    others.stream()
                            .filter(other -> other.attribute().equals(attribute))
                            .map(this::other)
                            .toList());
        }

        @SuppressWarnings("unchecked") // of the same attribute
        private PageFact.OtherValue other(Fact<?> other) {
            return new PageFact.OtherValue(change.apply((T) other.value()), other.source());
        }

        private FactKind kind() {
            FactKind kind = KINDS.get(attribute.id());
            if (kind == null) {
                throw new IllegalStateException("no kind of page fact for " + attribute);
            }
            return kind;
        }

        private static Map<String, FactKind> kinds() {
            Map<String, FactKind> kinds = new java.util.HashMap<>();
            for (FactKind kind : FactKind.values()) {
                kinds.put(kind.name().toLowerCase(java.util.Locale.ROOT), kind);
            }
            return Map.copyOf(kinds);
        }
    }

    private static <T> Shown<T> value(Attribute<T> attribute, Function<T, FactValue> change) {
        return new Shown<>(attribute, change);
    }

    private static <E extends Enum<E> & Term> Shown<E> term(Attribute<E> attribute) {
        return value(attribute, term -> new FactValue.Terms(List.of(term)));
    }

    private static <E extends Enum<E> & Term, C extends Collection<E>> Shown<C> terms(Attribute<C> attribute) {
        return value(attribute, set -> new FactValue.Terms(set.stream().sorted().toList()));
    }

    private static Shown<LengthRange> length(Attribute<LengthRange> attribute) {
        return value(attribute, FactValue.Length::new);
    }

    private static Shown<MonthSet> months(Attribute<MonthSet> attribute) {
        return value(attribute, FactValue.Months::new);
    }

    private static Shown<List<PlantColor>> colors(Attribute<List<PlantColor>> attribute) {
        return value(attribute, FactValue.Colors::new);
    }

    private static Shown<String> text(Attribute<String> attribute) {
        return value(attribute, FactValue.Text::new);
    }
}
