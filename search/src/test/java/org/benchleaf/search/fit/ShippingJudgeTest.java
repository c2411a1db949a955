package org.benchleaf.search.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.Plants;
import org.benchleaf.search.SaleRuleSamples;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Manner;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.Shipment;
import org.junit.jupiter.api.Test;

class ShippingJudgeTest {
    private static final Shipment TO_MASSACHUSETTS =
            Shipment.to(Destination.read("MA").orThrow(), LocalDate.of(2026, 12, 30));
    private static final PlantRules PHASE_OUT = SaleRuleSamples.said(
            SaleRuleSamples.rule("MA", SaleStanding.PROHIBITED, Manner.NAMED, "2025-12-08", "2027-01-01"));

    private static Fit fit(Shipment shipment, Facts facts) {
        return new FitJudge()
                .fit(
                        Need.of(new Wish.ShipTo(shipment)),
                        Plants.plant(1, Plants.name("Miscanthus", "sinensis"), facts),
                        PlantStock.none(PlantKey.ofSerial(1)),
                        Plants.NOW);
    }

    private static Fit fit(Shipment shipment, PlantRules said) {
        return fit(shipment, Facts.NONE.and(SaleRuleSamples.fact(said)));
    }

    @Test
    void saleRulesAreFixedUnlessTheAskerFreesThem() {
        assertThat(WeighedWish.of(new Wish.ShipTo(TO_MASSACHUSETTS)).fixed()).isTrue();
    }

    // Massachusetts phase-out: sale of Miscanthus sinensis through 2026-12-31, receipt barred from 2025-12-08
    @Test
    void whatIsBarredIsNoAnswer() {
        Shipment later = Shipment.to(TO_MASSACHUSETTS.to(), LocalDate.of(2027, 1, 1));

        assertThat(fit(TO_MASSACHUSETTS, PHASE_OUT).meetsAll()).isTrue();
        assertThat(fit(later, PHASE_OUT).answers()).isFalse();
        assertThat(fit(TO_MASSACHUSETTS.from(Destination.read("PA").orThrow()), PHASE_OUT)
                        .answers())
                .isFalse();
    }

    @Test
    void placeThatNoListCoversIsNotKnown() {
        Shipment wyoming = Shipment.to(Destination.read("WY").orThrow(), LocalDate.of(2026, 12, 30));

        assertThat(fit(wyoming, PHASE_OUT).reasons()).allMatch(Reason.Unknown.class::isInstance);
        assertThat(fit(TO_MASSACHUSETTS, Facts.NONE).reasons()).allMatch(Reason.Unknown.class::isInstance);
    }

    @Test
    void nameThatDoesNotSayEnoughIsNotKnown() {
        PlantRules unclear = SaleRuleSamples.said(
                SaleRuleSamples.rule("MA", SaleStanding.PROHIBITED, Manner.UNCLEAR, "", "2009-01-01"));

        assertThat(fit(TO_MASSACHUSETTS, unclear).reasons()).allMatch(Reason.Unknown.class::isInstance);
        assertThat(fit(TO_MASSACHUSETTS, unclear).answers()).isTrue();
    }

    @Test
    void restrictionIsMetUnderItsCondition() {
        PlantRules restricted = SaleRuleSamples.said(
                SaleRuleSamples.rule("MA", SaleStanding.RESTRICTED, Manner.NAMED, "", "2015-03-10"));

        assertThat(fit(TO_MASSACHUSETTS, restricted).meetsAll()).isTrue();
    }
}
