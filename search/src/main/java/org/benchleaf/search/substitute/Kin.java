package org.benchleaf.search.substitute;

import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.name.BotanicalName;

/// How near a substitute is to the original by descent; groups of an answer, the nearest first.
public enum Kin {
    /// Of the same species (of the same genus, where a cultivar has no species) and about as tall.
    SAME_SPECIES,
    /// Of the same species, and clearly lower.
    SMALLER_SISTER,
    /// Of the same species, and clearly taller.
    LARGER_SISTER,
    /// Another species that does the same work.
    OTHER_SPECIES;

    /// A sister is smaller below this share of the original's height; ours, no source.
    private static final double SMALLER = 0.75;

    static Kin of(PlantRecord original, PlantRecord other) {
        if (!isSameSpecies(original.name(), other.name())) {
            return OTHER_SPECIES;
        }
        return original.facts()
                .value(Attributes.HEIGHT)
                .flatMap(was -> other.facts().value(Attributes.HEIGHT).map(is -> bySize(was, is)))
                .orElse(SAME_SPECIES);
    }

    private static Kin bySize(LengthRange was, LengthRange is) {
        double ratio = is.middleCm() / was.middleCm();
        return ratio < SMALLER ? SMALLER_SISTER : ratio > 1 / SMALLER ? LARGER_SISTER : SAME_SPECIES;
    }

    static boolean isSameSpecies(BotanicalName one, BotanicalName other) {
        return species(one).equals(species(other));
    }

    /// Genus and epithet, or the genus alone: what is proposed once among other species.
    static String species(BotanicalName name) {
        return name.genus()
                + name.species().map(epithet -> " " + epithet.text()).orElse("");
    }
}
