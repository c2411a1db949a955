package org.benchleaf.app.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.benchleaf.app.service.RulesWords;
import org.benchleaf.app.service.SaleRuleService.Said;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Ruling;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.Shipment;

/// Sale rules as text for a terminal; the age of the list and who decides stand under every answer.
final class RulesText {
    private final Wording wording;

    RulesText(Wording wording) {
        this.wording = wording;
    }

    /// One shipment: the verdict, then each rule that has to do with the place.
    String verdict(Said said, SaleVerdict verdict) {
        StringBuilder text = new StringBuilder(heading(said));
        text.append("  ").append(wording.sentence(wording.verdict(verdict))).append('\n');
        for (Ruling ruling : verdict.rulings()) {
            String mark = verdict.of(ruling)
                    .map(standing -> standing == SaleStanding.PROHIBITED ? "✗" : "!")
                    .orElse("·");
            add(text, mark, ruling, verdict.shipment());
        }
        return text.append("  ")
                .append(wording.saleCaution(verdict.compiledOn()))
                .append('\n')
                .toString();
    }

    /// Every rule of every place that holds on a day or is to come.
    String all(Said said, LocalDate day) {
        StringBuilder text = new StringBuilder(heading(said));
        List<Ruling> rulings = RulesWords.rulings(said, day);
        if (rulings.isEmpty()) {
            text.append("  ")
                    .append(wording.text(
                            "rules.none-for", Map.of("plant", said.name().toString())))
                    .append('\n');
        }
        Shipment anywhere = Shipment.to(Destination.of(Region.all().getFirst()), day);
        rulings.forEach(ruling -> add(text, "·", ruling, anywhere));
        return text.append("  ")
                .append(wording.saleCaution(said.rules().compiledOn()))
                .append('\n')
                .toString();
    }

    private String heading(Said said) {
        return said.name() + "  "
                + said.key().map(key -> "[" + key + "]").orElseGet(() -> wording.text("rules.not-in-catalog"))
                + "\n"
                + (said.sure() ? "" : "  " + wording.text("rules.by-common-name") + "\n");
    }

    private void add(StringBuilder text, String mark, Ruling ruling, Shipment shipment) {
        text.append("  ")
                .append(mark)
                .append(' ')
                .append(wording.ruling(ruling, shipment))
                .append('\n');
        text.append("      ")
                .append(wording.text(
                        "rules.sources",
                        Map.of("source", ruling.match().source().text())))
                .append('\n');
    }
}
