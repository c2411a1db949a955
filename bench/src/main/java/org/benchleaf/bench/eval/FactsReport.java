package org.benchleaf.bench.eval;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.ZoneRange;

/// Single published facts beside what the catalog says: spans agree when they overlap.
final class FactsReport {
    private final Asking asking;
    private final PrintStream out;

    FactsReport(Asking asking, PrintStream out) {
        this.asking = asking;
        this.out = out;
    }

    void write() {
        int agree = 0;
        int gaps = 0;
        List<String> differ = new ArrayList<>();
        for (Map<String, String> row : Table.read("attribute-facts.csv")) {
            Optional<PlantRecord> plant = plant(Cells.of(row, "taxon"));
            Optional<Boolean> agrees = plant.flatMap(found -> agrees(found, row));
            if (agrees.isEmpty()) {
                gaps++;
            } else if (agrees.get()) {
                agree++;
            } else {
                differ.add("- " + Cells.of(row, "taxon") + ", " + Cells.of(row, "attribute") + ": "
                        + Cells.of(row, "value") + " ("
                        + Cells.of(row, "publisher") + "); the catalog says "
                        + stated(plant.orElseThrow(), Cells.of(row, "attribute")));
            }
        }
        out.println();
        out.println("## Single facts");
        out.println();
        out.println(agree + " sizes and zones agree (spans overlap), " + differ.size() + " differ, " + gaps
                + " could not be compared: the catalog lacks the plant or the fact, or the fact is no span.");
        out.println();
        differ.forEach(out::println);
    }

    private Optional<PlantRecord> plant(String taxon) {
        Optional<Taxon> wanted = Taxon.of(taxon);
        return asking.plants().stream()
                .filter(plant -> wanted.isPresent() && asking.holds(wanted.get(), plant))
                .filter(plant ->
                        plant.name().cultivar().equals(wanted.get().name().cultivar()))
                .findFirst();
    }

    private static Optional<Boolean> agrees(PlantRecord plant, Map<String, String> row) {
        return switch (Cells.of(row, "attribute")) {
            case "height_ft" -> lengths(plant, Attributes.HEIGHT, Cells.of(row, "value"));
            case "spread_ft" -> lengths(plant, Attributes.SPREAD, Cells.of(row, "value"));
            case "zones" ->
                ZoneRange.read(Cells.of(row, "value"))
                        .toOptional()
                        .flatMap(range -> plant.facts()
                                .value(Attributes.HARDINESS)
                                .map(known -> known.coldest().compareTo(range.warmest()) <= 0
                                        && Math.abs(known.coldest().half()
                                                        - range.coldest().half())
                                                <= 2));
            default -> Optional.empty();
        };
    }

    private static Optional<Boolean> lengths(PlantRecord plant, Attribute<LengthRange> attribute, String feet) {
        return LengthRange.read(feet + " ft")
                .toOptional()
                .flatMap(range -> plant.facts()
                        .value(attribute)
                        .map(known ->
                                known.lowCm() <= range.highCm() * 1.05 && range.lowCm() <= known.highCm() * 1.05));
    }

    private static String stated(PlantRecord plant, String attribute) {
        return switch (attribute) {
            case "height_ft" ->
                plant.facts()
                        .value(Attributes.HEIGHT)
                        .map(LengthRange::toString)
                        .orElse("nothing");
            case "spread_ft" ->
                plant.facts()
                        .value(Attributes.SPREAD)
                        .map(LengthRange::toString)
                        .orElse("nothing");
            default ->
                plant.facts()
                        .value(Attributes.HARDINESS)
                        .map(ZoneRange::toString)
                        .orElse("nothing");
        };
    }
}
