package org.benchleaf.app.service;

import java.time.LocalDate;
import java.util.List;
import org.benchleaf.app.service.SaleRuleService.Said;
import org.benchleaf.shared.rule.Phase;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.Ruling;

/// What is told of the rules that bear on a plant.
public final class RulesWords {
    private RulesWords() {}

    /// Every rule of every place that holds on a day or is to come.
    public static List<Ruling> rulings(Said said, LocalDate day) {
        return said.rules().matches().stream()
                .map(match -> at(match, day))
                .filter(ruling -> ruling.sale() != Phase.ENDED)
                .toList();
    }

    private static Ruling at(RuleMatch match, LocalDate day) {
        return new Ruling(
                match,
                Ruling.Reach.HERE,
                match.dates().saleOn(day),
                match.dates().receiptOn(day));
    }
}
