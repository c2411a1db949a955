package org.benchleaf.app.service;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.PublishedAdvice;
import org.benchleaf.search.substitute.Replaced;
import org.benchleaf.search.substitute.Welcome;
import org.benchleaf.shared.fact.Region;

/// What published lists name a plant instead of, and who says so: a reason to choose it.
public final class InsteadWords {
    private static final int MOST = 4;
    private static final int NAMED = 3;

    private final PublishedAdvice published;
    private final Optional<Region> home;
    private final Function<String, Optional<PlantRecord>> known;
    private final Wording words;

    /// @param home whose publishers are told first: the shop's own state, when it says where it is
    /// @param known plants by their botanical names, for their common ones
    public InsteadWords(
            PublishedAdvice published,
            Optional<Region> home,
            Function<String, Optional<PlantRecord>> known,
            Wording words) {
        this.home = home;
        this.published = published;
        this.known = known;
        this.words = words;
    }

    /// The originals that lists replace by it, that which most publishers name first; none for a plant that is
    /// unwelcome itself.
    public List<Replaced> replaced(PlantRecord plant) {
        return Welcome.isUnwelcome(plant.facts()) ? List.of() : published.replacedBy(plant.name(), home);
    }

    /// A line for each of the first of them.
    public List<String> of(PlantRecord plant) {
        return replaced(plant).stream().limit(MOST).map(this::line).toList();
    }

    private String line(Replaced one) {
        String name = one.original().text();
        Optional<String> common = known.apply(name).flatMap(plant -> plant.commonName(words.language()));
        return words.text(
                common.isPresent() ? "instead-of.common" : "instead-of",
                Map.of("name", name, "common", common.orElse(""), "publishers", publishers(one.publishers(), words)));
    }

    /// The first of them, and how many others.
    static String publishers(List<String> all, Wording words) {
        List<String> few = all.stream().limit(NAMED).toList();
        return all.size() > NAMED
                ? words.text(
                        "substitute.named-by.more",
                        Map.of("names", String.join(", ", few), "n", words.count(all.size() - NAMED)))
                : words.listOf(few);
    }
}
