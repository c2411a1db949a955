package org.benchleaf.bench.eval;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.search.Match;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.NeedSearch;
import org.benchleaf.search.need.NeedReader;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;

/// Asks the search, and knows the plants of the catalog.
final class Asking {
    private static final int MOST = 1000;

    private final Benchleaf benchleaf;
    private final NeedSearch search;
    private final NeedReader reader;
    private final Wording wording;
    private final List<PlantRecord> plants = new ArrayList<>();
    private final PlantNames names = new PlantNames();

    Asking(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.search = benchleaf.needSearch();
        this.reader = benchleaf.needReader();
        this.wording = benchleaf.wording();
        benchleaf.catalog().forEachPlant(plants::add);
    }

    List<PlantRecord> plants() {
        return plants;
    }

    boolean holds(Taxon taxon, PlantRecord plant) {
        return taxon.holds(plant, names);
    }

    boolean any(List<Taxon> taxa, PlantRecord plant) {
        return taxa.stream().anyMatch(taxon -> holds(taxon, plant));
    }

    /// What a second source says of a plant.
    Optional<Boolean> says(SecondSource source, String check, PlantRecord plant) {
        return source.says(check, plant, names);
    }

    boolean has(Taxon taxon) {
        return plants.stream().anyMatch(plant -> holds(taxon, plant));
    }

    /// The first plant of each species among those wanted.
    List<PlantRecord> species(Predicate<PlantRecord> wanted) {
        return firstOfEach(plants.stream().filter(wanted));
    }

    private static List<PlantRecord> firstOfEach(Stream<PlantRecord> plants) {
        Set<String> seen = new HashSet<>();
        return plants.filter(plant -> seen.add(Taxon.speciesOf(plant))).toList();
    }

    /// @throws IllegalArgumentException when a word of the sentence is not understood
    Ranked ask(String sentence) {
        NeedReading reading = reader.read(sentence, benchleaf.today());
        if (!reading.notUnderstood().isEmpty()) {
            throw new IllegalArgumentException(sentence + ": not understood " + reading.notUnderstood());
        }
        YearWeek week = YearWeek.of(benchleaf.today());
        return new Ranked(
                search.answer(new NeedQuery(reading.need(), "", week, 0, MOST)).matches(), names, wording);
    }

    /// An answer, best first.
    record Ranked(List<Match> matches, PlantNames names, Wording wording) {
        /// The first plant of each species among those wanted.
        List<PlantRecord> species(Predicate<PlantRecord> wanted) {
            return firstOfEach(matches.stream().map(Match::plant).filter(wanted));
        }

        /// Whether a plant of the taxon is known to meet every wish.
        boolean meets(Taxon taxon) {
            return matches.stream()
                    .anyMatch(match ->
                            taxon.holds(match.plant(), names) && match.fit().meetsAll());
        }

        /// What stands against the best plant of the taxon.
        String against(Taxon taxon) {
            return matches.stream()
                    .filter(match -> taxon.holds(match.plant(), names))
                    .findFirst()
                    .map(match -> match.fit().reasons().stream()
                            .filter(reason -> !(reason instanceof Reason.Met))
                            .map(reason -> (reason instanceof Reason.Unknown ? "gap: " : "disagrees: ")
                                    + wording.reason(reason))
                            .collect(Collectors.joining("; ")))
                    .orElse("known to miss what is never given up");
        }
    }
}
