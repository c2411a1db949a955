package org.benchleaf.app.service;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.search.pairing.Companion;
import org.benchleaf.search.pairing.Partner;
import org.benchleaf.search.pairing.Pollination;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.stock.Availability;

/// Partners and companions in words.
public final class PairingWords {
    private final Wording words;
    private final Spoken spoken;

    public PairingWords(Wording words) {
        this.words = words;
        this.spoken = new Spoken(words);
    }

    public String text(String key, Map<String, String> values) {
        return words.text(key, values);
    }

    /// What the plant needs to bear fruit, and whether the catalog has it.
    public String pollination(PlantRecord plant, List<Partner> partners) {
        Pollination pollination = Pollination.of(plant.facts());
        String need = words.text("pairing." + pollination);
        Optional<String> group = plant.facts().value(Attributes.POLLINATION_GROUP);
        String grouped = pollination.hasPartners() && group.isPresent()
                ? words.text("pairing.group", Map.of("need", need, "group", group.get()))
                : need;
        return pollination.hasPartners() && partners.isEmpty()
                ? words.text("pairing.none", Map.of("need", grouped))
                : grouped;
    }

    /// Why it is a partner, whether it blooms at the same time, and what there is of it.
    public String partner(Partner partner, YearWeek week) {
        return words.text(
                "pairing.partner",
                Map.of(
                        "how", words.text("pairing.how." + partner.how()),
                        "bloom", words.text("pairing.bloom." + partner.bloom()),
                        "stock", stock(partner.stock(), week)));
    }

    /// When it shows, and what there is of it.
    public String companion(Companion companion, YearWeek week) {
        return words.text(
                "pairing.companion",
                Map.of(
                        "months", spoken.months(companion.fills()),
                        "stock", stock(companion.match().stock(), week)));
    }

    private String stock(PlantStock stock, YearWeek week) {
        List<String> here = stock.items().stream()
                .filter(item -> stock.availability(item.key(), week) instanceof Availability.InStock
                        || stock.availability(item.key(), week) instanceof Availability.From)
                .map(item -> words.size(item.size(), item.form()))
                .distinct()
                .limit(4)
                .toList();
        return here.isEmpty() ? words.text("pairing.not-in-stock") : words.listOf(here);
    }
}
