package org.benchleaf.bench.engines;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.LengthRange;

/// One plant as a line of a wide table, as somebody would lay it out who has only a database: sets as bits,
/// what is not known empty. Columns: [#COLUMNS].
final class WideRows {
    static final String COLUMNS = "id integer, name text, form integer, foliage integer, zmin integer, zmax integer,"
            + " light integer, soil integer, hmax integer, deer integer, fall integer, bloom integer, color integer,"
            + " uses integer, states text, free3 integer";

    private WideRows() {}

    static Stream<String> of(ImportPlan plan, int first) {
        Map<Object, Integer> free = new HashMap<>();
        for (LotDraft lot : plan.lots()) {
            if (lot.size().toString().equals("#3") && lot.ready().isEmpty()) {
                free.merge(lot.name(), lot.count(), Integer::sum);
            }
        }
        int[] id = {first};
        return plan.plants().stream().map(plant -> line(id[0]++, plant, free.getOrDefault(plant.name(), 0)));
    }

    private static String line(int id, PlantDraft plant, int free3) {
        Facts facts = Facts.of(plant.facts());
        return Stream.of(
                        Integer.toString(id),
                        plant.name().sortKey(),
                        facts.value(Attributes.LIFE_FORM).map(WideRows::bits).orElse(""),
                        facts.value(Attributes.FOLIAGE)
                                .map(one -> bits(Set.of(one)))
                                .orElse(""),
                        facts.value(Attributes.HARDINESS)
                                .map(range -> "" + range.coldest().half())
                                .orElse(""),
                        facts.value(Attributes.HARDINESS)
                                .map(range -> "" + range.warmest().half())
                                .orElse(""),
                        facts.value(Attributes.EXPOSURE).map(WideRows::bits).orElse(""),
                        facts.value(Attributes.MOISTURE).map(WideRows::bits).orElse(""),
                        facts.value(Attributes.HEIGHT)
                                .map(LengthRange::highCm)
                                .map(String::valueOf)
                                .orElse(""),
                        facts.value(Attributes.DEER)
                                .map(rating -> "" + rating.ordinal())
                                .orElse(""),
                        facts.value(Attributes.FALL_COLOR)
                                .map(colors -> "" + colors.size())
                                .orElse(""),
                        facts.value(Attributes.BLOOM)
                                .map(months -> "" + months.bits())
                                .orElse(""),
                        facts.value(Attributes.FLOWER_COLOR)
                                .map(colors -> "" + colors.getFirst().family().ordinal())
                                .orElse(""),
                        facts.value(Attributes.USES).map(WideRows::bits).orElse(""),
                        facts.value(Attributes.NATIVE_STATES)
                                .map(WideRows::states)
                                .orElse(""),
                        Integer.toString(free3))
                .collect(Collectors.joining(","));
    }

    static <E extends Enum<E>> String bits(Set<E> values) {
        return Long.toString(
                values.stream().mapToLong(value -> 1L << value.ordinal()).sum());
    }

    private static String states(Set<Region> states) {
        return states.stream().map(Region::code).collect(Collectors.joining(" ", " ", " "));
    }

    static List<String> cells(String line) {
        return List.of(line.split(",", -1));
    }
}
