package org.benchleaf.catalog.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.audit.PlantAudit.Kind;
import org.benchleaf.catalog.audit.PlantAudit.Remark;
import org.benchleaf.catalog.intake.FactDoubts;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.names.OlderNames;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.LifeForm;

/// Looks at every plant that is grown. Holds no state and changes nothing.
///
/// The score of a plant is the weight of the facts that are known, own or taken from the taxon, and neither
/// impossible nor in conflict, in percent of the weight of those that buyers ask for; a name in use counts as one
/// of them. The weights are ours, no source.
public final class Audit {
    private static final Map<Attribute<?>, Integer> ASKED_FOR = askedFor();
    private static final int NAME_IN_USE = 2;

    private Audit() {}

    private static Map<Attribute<?>, Integer> askedFor() {
        Map<Attribute<?>, Integer> weights = new LinkedHashMap<>();
        weights.put(Attributes.HARDINESS, 3);
        weights.put(Attributes.HEIGHT, 3);
        weights.put(Attributes.EXPOSURE, 3);
        weights.put(Attributes.LIFE_FORM, 2);
        weights.put(Attributes.SPREAD, 2);
        weights.put(Attributes.MOISTURE, 2);
        weights.put(Attributes.FOLIAGE, 2);
        weights.put(Attributes.BLOOM, 2);
        weights.put(Attributes.FLOWER_COLOR, 2);
        weights.put(Attributes.CAUTIONS, 2);
        weights.put(Attributes.HABIT, 1);
        weights.put(Attributes.GROWTH_RATE, 1);
        weights.put(Attributes.FALL_COLOR, 1);
        weights.put(Attributes.DEER, 1);
        weights.put(Attributes.NATIVE_STATES, 1);
        weights.put(Attributes.USES, 1);
        weights.put(Attributes.FAMILY, 1);
        weights.put(Attributes.PHOTOGRAPHS, 1);
        return weights;
    }

    /// Looks at every plant, in the order of keys.
    ///
    /// @param names of the same catalog
    /// @param older what is known of older names beside the catalog's own synonyms
    /// @param each is handed every plant's result
    public static AuditSums run(CatalogView view, NameBook names, OlderNames older, Consumer<PlantAudit> each) {
        AuditSums.Adder adder = new AuditSums.Adder();
        view.forEachPlant(plant -> {
            PlantAudit result = of(plant, names, older);
            adder.add(result);
            each.accept(result);
        });
        return adder.sums();
    }

    /// Looks at one plant.
    public static PlantAudit of(PlantRecord plant, NameBook names, OlderNames older) {
        List<Remark> remarks = new ArrayList<>();
        FactDoubts.of(plant.name(), plant.facts())
                .forEach((attribute, problem) -> remarks.add(new Remark(Kind.IMPOSSIBLE, attribute.id(), problem)));
        Set<String> told = new HashSet<>();
        for (Fact<?> other : plant.otherFacts()) {
            conflict(plant, other)
                    .filter(remark -> told.add(remark.attribute()))
                    .ifPresent(remarks::add);
        }
        Optional<Remark> olderName = name(plant, names, older);
        olderName.ifPresent(remarks::add);
        Set<String> spoilt = new HashSet<>();
        remarks.forEach(remark -> spoilt.add(remark.attribute()));
        int all = NAME_IN_USE;
        int good = olderName.isPresent() ? 0 : NAME_IN_USE;
        for (Map.Entry<Attribute<?>, Integer> asked : ASKED_FOR.entrySet()) {
            Attribute<?> attribute = asked.getKey();
            if (isNeedless(attribute, plant)) {
                continue;
            }
            all += asked.getValue();
            boolean known = plant.facts().fact(attribute).isPresent();
            if (!known) {
                remarks.add(new Remark(Kind.GAP, attribute.id(), Problem.of("audit.gap", attribute.id())));
            } else if (!spoilt.contains(attribute.id())) {
                good += asked.getValue();
            }
        }
        return new PlantAudit(plant.key(), plant.name(), remarks, Math.round(100f * good / all));
    }

    /// A name that is an older one of another plant here, or by a list of older names.
    private static Optional<Remark> name(PlantRecord plant, NameBook names, OlderNames older) {
        String name = plant.name().toString();
        Optional<Problem> twice = names.bySynonym(name)
                .filter(key -> !key.equals(plant.key()))
                .flatMap(names::byKey)
                .map(other -> Problem.of("audit.name", name)
                        .with("accepted", other.name().toString()));
        return twice.or(() -> older.of(plant.name())
                        .map(known -> Problem.of("audit.name.older", name)
                                .with("accepted", known.accepted().toString())
                                .with("source", known.source().text())))
                .map(problem -> new Remark(Kind.NAME, "name", problem));
    }

    private static Optional<Remark> conflict(PlantRecord plant, Fact<?> other) {
        return plant.facts()
                .fact(other.attribute())
                .filter(shown -> FactDoubts.disagree(shown, other))
                .map(shown -> new Remark(
                        Kind.CONFLICT,
                        other.attribute().id(),
                        Problem.of("audit.conflict", shown.text())
                                .with("attribute", other.attribute().id())
                                .with("source", shown.source().text())
                                .with("other", other.text())
                                .with("otherSource", other.source().text())));
    }

    /// Nobody asks for the fall color of an evergreen, nor for the flowers of a conifer or a fern.
    private static boolean isNeedless(Attribute<?> attribute, PlantRecord plant) {
        Set<LifeForm> forms = plant.facts().value(Attributes.LIFE_FORM).orElse(Set.of());
        boolean flowerless = forms.contains(LifeForm.CONIFER) || forms.contains(LifeForm.FERN);
        boolean evergreen = plant.facts()
                .value(Attributes.FOLIAGE)
                .filter(Foliage.EVERGREEN::equals)
                .isPresent();
        return flowerless && (attribute.equals(Attributes.BLOOM) || attribute.equals(Attributes.FLOWER_COLOR))
                || evergreen && attribute.equals(Attributes.FALL_COLOR);
    }
}
