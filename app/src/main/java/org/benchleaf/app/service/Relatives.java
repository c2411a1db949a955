package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.render.page.Relative;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.plant.Kinship;

/// Reads `smaller sister of: Fothergilla major` and finds the other plant's page.
public final class Relatives {
    private final NameBook names;

    public Relatives(NameBook names) {
        this.names = names;
    }

    /// The plants that this one is compared with; a line that cannot be read is left out, import has reported it.
    public List<Relative> of(PlantRecord plant) {
        List<Relative> relatives = new ArrayList<>();
        for (String line : plant.facts().value(Attributes.RELATIVES).orElse(List.of())) {
            int colon = line.indexOf(':');
            if (colon < 0) {
                continue;
            }
            Optional<Kinship> kinship =
                    Term.read(Kinship.class, line.substring(0, colon)).toOptional();
            if (kinship.isPresent()
                    && NameReader.read(line.substring(colon + 1).strip())
                            instanceof NameReading.Read(var other, var notes)) {
                relatives.add(new Relative(kinship.get(), other, names.byName(other)));
            }
        }
        return List.copyOf(relatives);
    }
}
