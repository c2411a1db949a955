package org.benchleaf.app.service;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.Shipment;

/// What the catalog says against printing something: no price, no leave to sell it here, counts that are old.
final class PrintAdvice {
    /// A count older than this is doubted; common practice, no source.
    static final int OLD_DAYS = 30;

    private final Optional<Destination> place;
    private final LocalDate today;

    /// @param place where the shop sells
    PrintAdvice(Optional<Destination> place, LocalDate today) {
        this.place = place;
        this.today = today;
    }

    List<PrintFinding> sale(PlantRecord plant) {
        return place
                .flatMap(here -> plant.facts()
                        .value(Attributes.SALE_RULES)
                        .map(rules -> rules.at(Shipment.to(here, today)))
                        .filter(verdict -> verdict.sale()
                                .filter(standing -> standing == SaleStanding.PROHIBITED)
                                .isPresent())
                        .map(verdict -> finding(
                                plant,
                                "sale rules",
                                Problem.of("print.prohibited", here.toString())
                                        .with("date", verdict.compiledOn().toString()))))
                .stream()
                .toList();
    }

    List<PrintFinding> price(PlantRecord plant, Optional<Money> price) {
        return price.isPresent() ? List.of() : List.of(finding(plant, "price", Problem.of("print.price-missing", "")));
    }

    List<PrintFinding> count(PlantRecord plant, LotRecord lot) {
        List<PrintFinding> findings = new ArrayList<>();
        lot.seenOn().ifPresent(day -> {
            long days = ChronoUnit.DAYS.between(day, today);
            if (days > OLD_DAYS) {
                findings.add(finding(
                        plant,
                        "count",
                        Problem.of("print.count-old", lot.lot())
                                .with("date", day.toString())
                                .with("days", Long.toString(days))));
            }
        });
        return findings;
    }

    List<PrintFinding> noTradeNumber(PlantRecord plant) {
        return List.of(finding(plant, "trade number", Problem.of("print.trade-number-missing", "")));
    }

    private static PrintFinding finding(PlantRecord plant, String field, Problem problem) {
        return PrintFinding.of(plant.name().toString(), field, problem);
    }
}
