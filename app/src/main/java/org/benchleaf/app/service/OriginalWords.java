package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.Role;
import org.benchleaf.search.substitute.SubstituteAnswer;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.name.TaxonName;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;

/// What is said of a plant that is to be replaced, before anything is offered.
public final class OriginalWords {
    private static final int SEASONS = 2;
    private static final int USES = 3;
    private static final int ADVISED = 8;

    private final Wording words;

    public OriginalWords(Wording words) {
        this.words = words;
    }

    /// `Instead of Euonymus alatus, burning bush`
    public String insteadOf(OriginalFinder.Found found) {
        PlantRecord original = found.plant();
        Optional<String> common = original.commonName(words.language());
        return words.text(
                common.isPresent() ? "substitute.instead-of.common" : "substitute.instead-of",
                Map.of("name", original.name().toString(), "common", common.orElse("")));
    }

    /// For what the words were taken, and what else they may mean.
    ///
    /// @return empty when they are the name of one plant
    public Optional<String> takenAs(OriginalFinder.Found found, String typed) {
        String name = found.plant().name().toString();
        if (!found.others().isEmpty()) {
            return Optional.of(words.text(
                    "substitute.taken-as", Map.of("typed", typed, "name", name, "others", names(found.others()))));
        }
        return found.guessed()
                ? Optional.of(words.text("substitute.taken", Map.of("typed", typed, "name", name)))
                : Optional.empty();
    }

    /// That it stands in no catalog, and whose word its facts are.
    ///
    /// @return empty for a plant of the catalog
    public Optional<String> notGrown(OriginalFinder.Found found, SubstituteAnswer answer) {
        if (!ReferencePlants.isReference(found.plant())) {
            return Optional.empty();
        }
        return Optional.of(known(found.plant(), advised(answer)));
    }

    /// What it does in a garden, and that it runs wild where it does.
    public List<String> work(OriginalFinder.Found found, Role role) {
        List<String> lines = new ArrayList<>();
        String work = role(role, found.plant().facts());
        if (!work.isEmpty()) {
            lines.add(words.text("substitute.role", Map.of("role", work)));
        }
        if (role.unwelcome()) {
            lines.add(words.text("substitute.role.unwelcome"));
        }
        return lines;
    }

    /// What would have come among the best and runs wild as well.
    public Optional<String> passedOver(SubstituteAnswer answer) {
        return answer.passedOver().isEmpty()
                ? Optional.empty()
                : Optional.of(words.text("substitute.passed-over", Map.of("names", names(answer.passedOver()))));
    }

    private String known(PlantRecord original, String advised) {
        List<Fact<?>> facts = original.facts().all().stream()
                .filter(fact -> !fact.attribute().equals(Attributes.SALE_RULES))
                .toList();
        if (facts.isEmpty()) {
            return advised.isEmpty()
                    ? words.text(
                            "substitute.only-genus",
                            Map.of("genus", original.name().genus()))
                    : words.text("substitute.only-named", Map.of("names", advised));
        }
        boolean ofSpecies = facts.stream().allMatch(Fact::inherited);
        return ofSpecies
                ? words.text(
                        "substitute.as-species",
                        Map.of("species", TaxonName.of(original.name()).text()))
                : words.text("substitute.not-grown", Map.of("source", source(facts)));
    }

    private static String advised(SubstituteAnswer answer) {
        return answer.advised().stream().limit(ADVISED).map(TaxonName::text).collect(Collectors.joining(", "));
    }

    private static String names(List<PlantRecord> plants) {
        return plants.stream().map(plant -> plant.name().toString()).collect(Collectors.joining(", "));
    }

    private static String source(List<Fact<?>> facts) {
        return facts.stream()
                .map(fact -> fact.source().text())
                .distinct()
                .sorted()
                .collect(Collectors.joining("; "));
    }

    /// What the original does: its use said or usual, and the seasons it is looked at for.
    public String role(Role role, Facts facts) {
        List<Use> uses = role.use()
                .map(List::of)
                .orElseGet(() -> role.uses().stream().sorted().limit(USES).toList());
        return Stream.of(
                        uses.stream().map(words::term).toList(),
                        role.seasons().stream()
                                .limit(SEASONS)
                                .map(season -> season(season, facts))
                                .toList())
                .filter(parts -> !parts.isEmpty())
                .map(words::listOf)
                .collect(Collectors.joining("; "));
    }

    private String season(Season season, Facts facts) {
        Optional<String> color = facts.value(Attributes.colors(season)).orElse(List.of()).stream()
                .findFirst()
                .map(PlantColor::word);
        return color.isPresent()
                ? words.text("substitute.role.season", Map.of("color", color.get(), "season", words.term(season)))
                : words.text("substitute.role.season.plain", Map.of("season", words.term(season)));
    }
}
