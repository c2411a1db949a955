package org.benchleaf.search.substitute;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.search.substitute.Point.Relation;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.plant.Season;

/// Compares a substitute with the original, aspect by aspect. What counts as alike is ours, no source: a fifth
/// of a length, one family of color, one half zone, one month.
final class Comparer {
    private static final double ALIKE_LENGTH = 1.2;

    private Comparer() {}

    /// @param role whose seasons are told first
    static Comparison compare(Facts original, Facts substitute, Role role) {
        List<Point> differs = new ArrayList<>();
        List<Point> agrees = new ArrayList<>();
        List<Aspect> unknown = new ArrayList<>();
        for (Aspect aspect : order(role)) {
            Optional<? extends Fact<?>> was = original.fact(aspect.attribute());
            Optional<? extends Fact<?>> is = substitute.fact(aspect.attribute());
            if (aspect == Aspect.NATIVE) {
                nativity(was, is).ifPresent(point -> (point.relation() == Relation.SAME ? agrees : differs).add(point));
            } else if (was.isPresent() && is.isPresent()) {
                Point point = point(aspect, was.get(), is.get());
                (point.relation() == Relation.SAME ? agrees : differs).add(point);
            } else if (was.isPresent()) {
                unknown.add(aspect);
            }
        }
        return new Comparison(differs, agrees, unknown);
    }

    private static List<Aspect> order(Role role) {
        List<Aspect> first = role.seasons().stream()
                .limit(1)
                .flatMap(season -> ofSeason(season).stream())
                .toList();
        List<Aspect> all = new ArrayList<>(List.of(Aspect.values()));
        all.sort(Comparator.comparing(aspect -> !first.contains(aspect)));
        return all;
    }

    private static List<Aspect> ofSeason(Season season) {
        return switch (season) {
            case FLOWER -> List.of(Aspect.FLOWER_COLOR, Aspect.BLOOM);
            case FOLIAGE -> List.of(Aspect.LEAF_COLOR);
            case FALL_COLOR -> List.of(Aspect.FALL_COLOR);
            case FRUIT -> List.of(Aspect.FRUIT_COLOR);
            case STEM -> List.of(Aspect.STEM_COLOR);
        };
    }

    private static Optional<Point> nativity(Optional<? extends Fact<?>> was, Optional<? extends Fact<?>> is) {
        if (is.isEmpty() && was.isEmpty()) {
            return Optional.empty();
        }
        Relation relation =
                was.isPresent() && is.isPresent() ? Relation.SAME : is.isPresent() ? Relation.MORE : Relation.UNKNOWN;
        return relation == Relation.UNKNOWN
                ? Optional.empty()
                : Optional.of(
                        new Point(Aspect.NATIVE, relation, relation == Relation.MORE, was.map(f -> f), is.map(f -> f)));
    }

    private static Point point(Aspect aspect, Fact<?> was, Fact<?> is) {
        Relation relation = relation(aspect, was.value(), is.value());
        boolean better = relation == Relation.MORE && moreIsBetter(aspect);
        return new Point(aspect, relation, better, Optional.of(was), Optional.of(is));
    }

    private static boolean moreIsBetter(Aspect aspect) {
        return switch (aspect) {
            case LIGHT, SOIL, DROUGHT, BLOOM, FALL_COLOR, HARDINESS, DEER, FRAGRANCE, WILDLIFE, NATIVE -> true;
            case KIND, FOLIAGE, HEIGHT, SPREAD, HABIT, FLOWER_COLOR, FRUIT_COLOR, LEAF_COLOR, STEM_COLOR, GROWTH ->
                false;
        };
    }

    private static Relation relation(Aspect aspect, Object was, Object is) {
        if (was.equals(is)) {
            return Relation.SAME;
        }
        if (was instanceof LengthRange before && is instanceof LengthRange after) {
            return lengths(before, after);
        }
        if (was instanceof ZoneRange before && is instanceof ZoneRange after) {
            int colder = before.coldest().half() - after.coldest().half();
            return byStep(colder, 1);
        }
        if (was instanceof MonthSet before && is instanceof MonthSet after) {
            return months(before, after);
        }
        if (was instanceof List<?> before && is instanceof List<?> after) {
            return colors(before, after);
        }
        if (was instanceof Set<?> before && is instanceof Set<?> after) {
            return sets(before, after, aspect);
        }
        if (was instanceof Enum<?> before && is instanceof Enum<?> after) {
            return words(aspect, before, after);
        }
        return Relation.OTHER;
    }

    private static Relation lengths(LengthRange was, LengthRange is) {
        double ratio = is.middleCm() / was.middleCm();
        return ratio > ALIKE_LENGTH ? Relation.MORE : ratio < 1 / ALIKE_LENGTH ? Relation.LESS : Relation.SAME;
    }

    private static Relation byStep(int more, int alike) {
        return more > alike ? Relation.MORE : more < -alike ? Relation.LESS : Relation.SAME;
    }

    private static Relation months(MonthSet was, MonthSet is) {
        if (was.and(is).isEmpty()) {
            return Relation.OTHER;
        }
        return byStep(Integer.bitCount(is.bits()) - Integer.bitCount(was.bits()), 1);
    }

    /// One family in common is alike; an empty list is known to have no such color.
    private static Relation colors(List<?> was, List<?> is) {
        if (was.isEmpty() || is.isEmpty()) {
            return was.isEmpty() && is.isEmpty() ? Relation.SAME : was.isEmpty() ? Relation.MORE : Relation.LESS;
        }
        boolean shared = was.stream()
                .filter(PlantColor.class::isInstance)
                .map(color -> ((PlantColor) color).family())
                .anyMatch(family ->
                        is.stream().anyMatch(color -> color instanceof PlantColor other && other.family() == family));
        return shared ? Relation.SAME : Relation.OTHER;
    }

    private static Relation sets(Set<?> was, Set<?> is, Aspect aspect) {
        if (aspect == Aspect.KIND) {
            return was.stream().anyMatch(is::contains) ? Relation.SAME : Relation.OTHER;
        }
        if (is.containsAll(was)) {
            return Relation.MORE;
        }
        return was.containsAll(is) ? Relation.LESS : Relation.OTHER;
    }

    private static Relation words(Aspect aspect, Enum<?> was, Enum<?> is) {
        int later = is.ordinal() - was.ordinal();
        return switch (aspect) {
            case DROUGHT, GROWTH, FRAGRANCE -> later > 0 ? Relation.MORE : Relation.LESS;
            // the scale of damage runs from rarely to frequently
            case DEER -> later < 0 ? Relation.MORE : Relation.LESS;
            default -> Relation.OTHER;
        };
    }
}
