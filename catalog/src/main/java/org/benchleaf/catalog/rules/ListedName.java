package org.benchleaf.catalog.rules;

import java.util.Optional;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;

/// A name as a rule states it, and which plants it takes in.
///
/// @param text as in the list
/// @param name its parts
record ListedName(String text, BotanicalName name) {
    /// How a plant stands to a listed name.
    enum Nearness {
        /// It is that taxon, or belongs to it.
        WITHIN,
        /// It is another one.
        OUTSIDE,
        /// Its name does not say: no species given, or no rank below it.
        NOT_SAID,
        /// It is a hybrid within the genus; its parents decide.
        HYBRID
    }

    static ListedName of(String text, BotanicalName name) {
        return new ListedName(text, name);
    }

    /// Whether the plant's own name spells the taxon exactly so.
    boolean spells(BotanicalName plant) {
        return plant.genus().equals(name.genus())
                && plant.species().equals(name.species())
                && (name.infraspecific().isEmpty() || plant.infraspecific().equals(name.infraspecific()));
    }

    Nearness nearness(BotanicalName plant) {
        if (!NameStem.fold(plant.genus()).equals(NameStem.fold(name.genus()))) {
            return Nearness.OUTSIDE;
        }
        if (name.species().isEmpty()) {
            return name.cultivar().isEmpty() ? Nearness.WITHIN : cultivar(plant);
        }
        if (plant.species().isEmpty()) {
            return Nearness.NOT_SAID;
        }
        if (!same(plant.species().get(), name.species().get())) {
            boolean hybrid = plant.species().get().mark() != HybridMark.NONE;
            return hybrid ? Nearness.HYBRID : Nearness.OUTSIDE;
        }
        if (name.infraspecific().isPresent()) {
            if (plant.infraspecific().isEmpty()) {
                return plant.cultivar().isPresent() || name.cultivar().isEmpty() ? Nearness.NOT_SAID : Nearness.OUTSIDE;
            }
            if (!same(
                    plant.infraspecific().get().epithet(),
                    name.infraspecific().get().epithet())) {
                return Nearness.OUTSIDE;
            }
        }
        return name.cultivar().isEmpty() ? Nearness.WITHIN : cultivar(plant);
    }

    /// A rule on one cultivar takes in that cultivar only.
    private Nearness cultivar(BotanicalName plant) {
        Optional<String> wanted = name.cultivar().map(NameStem::fold);
        return plant.cultivar().map(NameStem::fold).equals(wanted) ? Nearness.WITHIN : Nearness.OUTSIDE;
    }

    private static boolean same(Epithet one, Epithet other) {
        return NameStem.stem(one.text()).equals(NameStem.stem(other.text()));
    }
}
