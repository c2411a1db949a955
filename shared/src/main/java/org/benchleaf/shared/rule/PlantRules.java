package org.benchleaf.shared.rule;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.rule.Ruling.Reach;

/// All that the lists of sale rules say of one plant. An empty list of matches says that no list names it, no more.
///
/// @param matches rules that bear on the plant, in the order of the lists
/// @param covered states and provinces of which the lists hold any rule
/// @param compiledOn when the newest of the lists was compiled
public record PlantRules(List<RuleMatch> matches, Set<Region> covered, LocalDate compiledOn) {
    private static final String PART = "\u001e";

    public PlantRules {
        matches = List.copyOf(matches);
        covered = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(covered));
    }

    /// What they say of a shipment.
    public SaleVerdict at(Shipment shipment) {
        List<Ruling> rulings = new ArrayList<>();
        for (RuleMatch match : matches) {
            reach(match, shipment).ifPresent(reach -> {
                Ruling ruling = new Ruling(
                        match,
                        reach,
                        match.dates().saleOn(shipment.on()),
                        match.dates().receiptOn(shipment.on()));
                if (ruling.sale() != Phase.ENDED) {
                    rulings.add(ruling);
                }
            });
        }
        rulings.sort(
                Comparator.comparing((Ruling ruling) -> ruling.saleStanding().isEmpty())
                        .thenComparing(ruling -> ruling.match().standing())
                        .thenComparing(Ruling::reach)
                        .thenComparing(ruling -> ruling.match().rule()));
        return new SaleVerdict(shipment, rulings, covered.contains(shipment.to().region()), compiledOn);
    }

    private static Optional<Reach> reach(RuleMatch match, Shipment shipment) {
        RuleArea area = match.area();
        boolean here = area.covers(shipment.to());
        if (match.kind() == RuleKind.QUARANTINE) {
            boolean leaves = shipment.from().map(area::covers).orElse(false) && !here;
            return leaves
                    ? Optional.of(Reach.LEAVING)
                    : here || area.mayCover(shipment.to()) ? Optional.of(Reach.INSIDE) : Optional.empty();
        }
        if (here) {
            return Optional.of(Reach.HERE);
        }
        return area.mayCover(shipment.to()) ? Optional.of(Reach.SOME_COUNTY) : Optional.empty();
    }

    /// The form that [#read] reads back.
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(compiledOn + PART + Region.write(covered));
        matches.forEach(match -> text.append(PART).append(match.write()));
        return text.toString();
    }

    public static Reading<PlantRules> read(String text) {
        String[] parts = text.split(PART, -1);
        if (parts.length < 2) {
            return Reading.refused("rules.text", text);
        }
        List<RuleMatch> matches = new ArrayList<>();
        for (String part : Arrays.asList(parts).subList(2, parts.length)) {
            switch (RuleMatch.read(part)) {
                case Reading.Read<RuleMatch>(RuleMatch match) -> matches.add(match);
                case Reading.Refused<RuleMatch>(Problem problem) -> {
                    return new Reading.Refused<>(problem);
                }
            }
        }
        try {
            LocalDate compiledOn = LocalDate.parse(parts[0]);
            Reading<Set<Region>> covered = parts[1].isEmpty() ? Reading.of(Set.of()) : Region.readSet(parts[1]);
            return covered.map(regions -> new PlantRules(matches, regions, compiledOn));
        } catch (DateTimeParseException noDay) {
            return Reading.refused("rules.text", text);
        }
    }
}
