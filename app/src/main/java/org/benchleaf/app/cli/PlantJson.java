package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.substitute.Replaced;
import org.benchleaf.shared.measure.YearWeek;

/// All that is known of a plant as JSON; the shape is described in `docs/names.md`.
final class PlantJson {
    private final ZoneId zone;

    PlantJson(ZoneId zone) {
        this.zone = zone;
    }

    String text(PlantRecord plant, PlantStock stock, YearWeek week, Instant now, List<Replaced> replaced) {
        ObjectNode root = Json.object();
        root.put("key", plant.key().text());
        NameJson.written(root, plant.name());
        plant.taxon().ifPresent(taxon -> root.put("taxon", taxon.text()));
        root.put("retired", plant.retired());
        NameJson.otherNames(root, plant);
        ArrayNode facts = root.putArray("facts");
        for (Attribute<?> attribute : Attributes.all()) {
            plant.facts().fact(attribute).ifPresent(fact -> fact(facts.addObject(), fact, true));
            plant.otherFacts().stream()
                    .filter(other -> other.attribute().equals(attribute))
                    .forEach(other -> fact(facts.addObject(), other, false));
        }
        ArrayNode insteadOf = root.putArray("insteadOf");
        replaced.forEach(one -> {
            ObjectNode node = insteadOf.addObject().put("name", one.original().text());
            ArrayNode namedBy = node.putArray("namedBy");
            one.publishers().forEach(namedBy::add);
        });
        new StockJson(zone).items(root, stock, stock.items(), Optional.empty(), week, now);
        return Json.text(root);
    }

    private static void fact(ObjectNode node, Fact<?> fact, boolean chosen) {
        node.put("fact", fact.attribute().id())
                .put("value", fact.text())
                .put("source", fact.source().text())
                .put("chosen", chosen)
                .put("inherited", fact.inherited());
    }
}
