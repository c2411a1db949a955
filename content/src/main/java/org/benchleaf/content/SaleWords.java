package org.benchleaf.content;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Jurisdiction;
import org.benchleaf.shared.rule.Manner;
import org.benchleaf.shared.rule.Phase;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.Ruling;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.Shipment;

/// Sale rules and verdicts in words.
final class SaleWords {
    private final Wording words;

    SaleWords(Wording words) {
        this.words = words;
    }

    /// The reason of a wish to ship, with the rule that decides and the age of the list.
    String reason(Reason reason, Shipment shipment) {
        Optional<String> stored = switch (reason) {
            case Reason.Met(Wish wish, Reason.Seen seen, boolean knownFor) -> Optional.of(seen.value());
            case Reason.Missed(Wish wish, Reason.Seen seen, Reason.Shortfall by) -> Optional.of(seen.value());
            case Reason.Unknown unknown -> Optional.empty();
        };
        return stored.flatMap(text -> PlantRules.read(text).toOptional())
                .map(rules -> rules.at(shipment))
                .map(verdict -> words.text(
                        "rules.reason",
                        Map.of(
                                "verdict",
                                verdict.deciding()
                                        .map(ruling -> ruling(ruling, shipment))
                                        .orElseGet(() -> verdict(verdict)),
                                "date",
                                words.date(verdict.compiledOn()))))
                .orElseGet(() -> words.text("unknown.ShipTo", Map.of("place", place(shipment.to()))));
    }

    String verdict(SaleVerdict verdict) {
        Shipment shipment = verdict.shipment();
        return words.text(
                "rules.answer." + verdict.answer().name(),
                Map.of("place", place(shipment.to()), "date", words.date(shipment.on())));
    }

    String ruling(Ruling ruling, Shipment shipment) {
        RuleMatch match = ruling.match();
        List<String> parts = new ArrayList<>();
        parts.add(line(ruling));
        dates(ruling, shipment, parts);
        switch (match.manner()) {
            case NAMED -> {}
            case OTHER_NAME -> parts.add(words.text("rules.listed-as", Map.of("name", match.listedAs())));
            case HYBRID, UNCLEAR, EXEMPT, CONDITIONALLY_EXEMPT ->
                parts.add(words.text("rules.manner." + match.manner().name(), Map.of("name", match.listedAs())));
        }
        if (ruling.reach() != Ruling.Reach.HERE) {
            parts.add(words.text("rules.reach." + ruling.reach().name()));
        }
        if (!match.notice().isBlank()) {
            parts.add(match.notice());
        }
        return String.join("; ", parts);
    }

    private String line(Ruling ruling) {
        RuleMatch match = ruling.match();
        String area = area(match.area());
        if (match.kind() == RuleKind.QUARANTINE) {
            return words.text("rules.quarantine", Map.of("area", area));
        }
        String standing = words.text("standing."
                + (match.manner() == Manner.CONDITIONALLY_EXEMPT
                                ? match.effective().orElse(match.standing())
                                : match.standing())
                        .name());
        Optional<LocalDate> from = match.dates().saleFrom();
        if (from.isEmpty()) {
            return words.text("rules.line", Map.of("area", area, "standing", standing));
        }
        return words.text(
                ruling.sale() == Phase.COMING ? "rules.line.from" : "rules.line.since",
                Map.of("area", area, "standing", standing, "date", words.date(from.get())));
    }

    /// In a phase-out both days are told: until when it may be sold, since when none may come in.
    private void dates(Ruling ruling, Shipment shipment, List<String> parts) {
        Optional<LocalDate> sale = ruling.match().dates().saleFrom();
        Optional<LocalDate> receipt = ruling.match().dates().receipt();
        boolean prohibits = ruling.match().effective().equals(Optional.of(SaleStanding.PROHIBITED));
        if (sale.isPresent() && ruling.sale() == Phase.COMING && prohibits) {
            parts.add(words.text(
                    "rules.sale-until", Map.of("date", words.date(sale.get().minusDays(1)))));
        }
        if (receipt.isPresent() && !receipt.equals(sale) && ruling.sale() == Phase.COMING) {
            boolean already = !shipment.on().isBefore(receipt.get());
            parts.add(words.text(
                    already ? "rules.receipt.since" : "rules.receipt.from", Map.of("date", words.date(receipt.get()))));
        }
    }

    String place(Destination place) {
        return place.county()
                .map(county -> words.text(
                        "rules.county",
                        Map.of("county", county, "region", place.region().name())))
                .orElse(place.region().name());
    }

    /// Counties of one state are named together.
    String area(RuleArea area) {
        Map<String, List<String>> counties = new LinkedHashMap<>();
        for (Jurisdiction place : area.places()) {
            String region =
                    place.region().map(Region::name).orElseGet(() -> words.text("rules.country." + place.country()));
            List<String> within = counties.computeIfAbsent(region, fresh -> new ArrayList<>());
            if (area.places().stream()
                    .noneMatch(
                            other -> other.county().isEmpty() && other.region().equals(place.region()))) {
                place.county().ifPresent(within::add);
            }
        }
        return words.listOf(counties.entrySet().stream()
                .map(entry -> counties(entry.getKey(), entry.getValue()))
                .toList());
    }

    private String counties(String region, List<String> counties) {
        return switch (counties.size()) {
            case 0 -> region;
            case 1 -> words.text("rules.county", Map.of("county", counties.getFirst(), "region", region));
            default -> words.text("rules.counties", Map.of("counties", words.listOf(counties), "region", region));
        };
    }

    /// The keys that are put together from names, for the test that none is missing.
    static List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (SaleVerdict.Answer answer : SaleVerdict.Answer.values()) {
            keys.add("rules.answer." + answer.name());
        }
        for (Ruling.Reach reach : Ruling.Reach.values()) {
            if (reach != Ruling.Reach.HERE) {
                keys.add("rules.reach." + reach.name());
            }
        }
        for (Manner manner : List.of(Manner.HYBRID, Manner.CONDITIONALLY_EXEMPT, Manner.EXEMPT, Manner.UNCLEAR)) {
            keys.add("rules.manner." + manner.name());
        }
        return keys;
    }
}
