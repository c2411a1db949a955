package org.benchleaf.catalog.export;

import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.Infraspecific;

/// The taxonomic part of a plant under the terms of Darwin Core, class Taxon; source: dwc.tdwg.org/terms,
/// 2023-09-18.
final class DarwinCore {
    static final List<String> TERMS = List.of(
            "dwc:taxonID",
            "dwc:scientificName",
            "dwc:family",
            "dwc:genus",
            "dwc:specificEpithet",
            "dwc:infraspecificEpithet",
            "dwc:cultivarEpithet",
            "dwc:taxonRank",
            "dwc:vernacularName",
            "dwc:nomenclaturalCode");

    private DarwinCore() {}

    static List<String> cells(PlantRecord plant) {
        BotanicalName name = plant.name();
        boolean cultivated = name.cultivar().isPresent() || name.group().isPresent();
        return List.of(
                plant.key().text(),
                name.toString(),
                plant.facts().value(Attributes.FAMILY).orElse(""),
                name.genus(),
                epithet(name.species()),
                epithet(name.infraspecific().map(Infraspecific::epithet)),
                name.cultivar().orElse(""),
                rank(name),
                plant.commonNames().stream().findFirst().map(CommonName::text).orElse(""),
                cultivated ? "ICNCP" : "ICN");
    }

    private static String epithet(Optional<Epithet> epithet) {
        return epithet.map(Epithet::text).orElse("");
    }

    private static String rank(BotanicalName name) {
        if (name.cultivar().isPresent()) {
            return "cultivar";
        }
        if (name.group().isPresent()) {
            return "cultivar group";
        }
        return name.infraspecific()
                .map(below -> switch (below.rank().mark()) {
                    case "subsp." -> "subspecies";
                    case "var." -> "variety";
                    case "f." -> "form";
                    default -> below.rank().mark();
                })
                .orElse(name.species().isPresent() ? "species" : "genus");
    }
}
