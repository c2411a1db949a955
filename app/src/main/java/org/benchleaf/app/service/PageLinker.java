package org.benchleaf.app.service;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.PageLink;
import org.benchleaf.render.page.PageLinks;
import org.benchleaf.search.pairing.Partner;
import org.benchleaf.search.pairing.PartnerFinder;
import org.benchleaf.search.pairing.Pollination;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.Purpose;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.stock.Availability;

/// Where a plant's live page leads besides: to what takes its place while it is gone, and to its partners for
/// fruit.
public final class PageLinker {
    private static final int MOST = 3;
    /// Differences told of each; the rest is on its own page.
    private static final int TOLD = 2;

    private final SubstituteFinder substitutes;
    private final PartnerFinder partners;
    private final InsteadWords insteadOf;
    private final Wording words;
    private final ComparisonWords comparisons;

    public PageLinker(SubstituteFinder substitutes, PartnerFinder partners, InsteadWords insteadOf, Wording words) {
        this.insteadOf = insteadOf;
        this.substitutes = substitutes;
        this.partners = partners;
        this.words = words;
        this.comparisons = new ComparisonWords(words);
    }

    /// @param shipment a sale at home, when the shop says where that is
    public PageLinks of(PlantRecord plant, PlantStock stock, Optional<Shipment> shipment, YearWeek week) {
        boolean here = stock.items().stream()
                .anyMatch(item -> stock.availability(item.key(), week) instanceof Availability.InStock);
        List<PageLink> instead = here ? List.of() : instead(plant, shipment, week);
        Pollination pollination = Pollination.of(plant.facts());
        if (!pollination.hasPartners()) {
            return new PageLinks(instead, insteadOf.of(plant), "", List.of());
        }
        List<Partner> found = partners.of(plant);
        return new PageLinks(
                instead,
                insteadOf.of(plant),
                new PairingWords(words).pollination(plant, found),
                found.stream().limit(MOST).map(partner -> link(partner, week)).toList());
    }

    private List<PageLink> instead(PlantRecord plant, Optional<Shipment> shipment, YearWeek week) {
        return substitutes
                .find(new SubstituteQuery(plant, Purpose.NOT_SAID, Demand.ANY, shipment, List.of(), week, MOST))
                .best()
                .stream()
                .map(one -> link(one, week))
                .toList();
    }

    private PageLink link(Substitute one, YearWeek week) {
        String differs = one.comparison().differs().stream()
                .limit(TOLD)
                .map(comparisons::sentence)
                .collect(Collectors.joining(" "));
        String hazards = String.join("; ", comparisons.hazards(one));
        String told =
                hazards.isEmpty() ? differs : differs + " " + words.text("substitute.hazard", Map.of("text", hazards));
        PlantRecord plant = one.match().plant();
        return new PageLink(
                plant.name(),
                plant.key(),
                words.text(
                        "web.instead.why",
                        Map.of("text", told, "sizes", sizes(one.match().stock(), week))));
    }

    private PageLink link(Partner partner, YearWeek week) {
        String sizes = sizes(partner.stock(), week);
        return new PageLink(
                partner.plant().name(),
                partner.plant().key(),
                sizes.isEmpty()
                        ? words.text("web.partner.none")
                        : words.text("web.partner.here", Map.of("sizes", sizes)));
    }

    private String sizes(PlantStock stock, YearWeek week) {
        return words.listOf(stock.items().stream()
                .filter(item -> stock.availability(item.key(), week) instanceof Availability.InStock)
                .map(item -> words.size(item.size(), item.form()))
                .distinct()
                .toList());
    }
}
