package org.benchleaf.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.fit.Candidate;
import org.benchleaf.search.fit.Fit;
import org.benchleaf.search.fit.FitJudge;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.index.Proposal;
import org.benchleaf.shared.code.PlantKey;

/// Answers needs: the index ranks all plants, the catalog is read for the best, and these are judged afresh, so
/// that nothing is said that is no longer so. Safe for many threads.
public final class NeedSearch {
    private final CatalogView catalog;
    private final PlantIndex index;
    private final PlantsAtHand plants;
    private final FitJudge judge = new FitJudge();

    /// @param index the index of that catalog; whoever changes the catalog has it catch up
    public NeedSearch(CatalogView catalog, PlantIndex index) {
        this(catalog, index, new PlantsAtHand(catalog));
    }

    /// @param plants shared with others who answer from the same catalog
    public NeedSearch(CatalogView catalog, PlantIndex index, PlantsAtHand plants) {
        this.catalog = catalog;
        this.index = index;
        this.plants = plants;
    }

    /// The best plants for a need, each with a reason for every wish.
    ///
    /// Plants known to miss a fixed wish are left out. A plant that sold out or was retired since the index
    /// caught up moves down or leaves; one that came in since may be missed until the index has caught up.
    public NeedAnswer answer(NeedQuery query) {
        index.freshen();
        // as many again are proposed as asked for, in place of those that turn out to be gone
        int asked = query.skip() + query.limit();
        Proposal proposal =
                index.propose(query.need(), query.words(), query.facets(), query.now(), asked + query.limit());
        List<PlantKey> keys = proposal.best();
        List<Match> matches = new ArrayList<>();
        int next = Math.min(query.skip(), keys.size());
        while (next < keys.size() && matches.size() < query.limit()) {
            int end = Math.min(keys.size(), next + query.limit() - matches.size());
            matches.addAll(judged(query, keys.subList(next, end)));
            next = end;
        }
        matches.sort((one, other) -> one.fit().compareTo(other.fit()));
        return new NeedAnswer(
                proposal.revision(),
                proposal.tally().total(),
                proposal.tally().meetAll(),
                proposal.tally().missNone(),
                matches,
                Relaxation.of(query.need(), proposal.tally()),
                proposal.loosenings(),
                proposal.facets());
    }

    /// Why a plant is among the answers, or is not: "why not this one?". Its reasons, and its place when it
    /// has one.
    ///
    /// @return empty when there is no such plant
    public Optional<Why> why(NeedQuery query, PlantKey plant) {
        Map<PlantKey, PlantRecord> plants = catalog.plants(List.of(plant));
        return Optional.ofNullable(plants.get(plant)).map(record -> {
            PlantStock stock = catalog.stock(List.of(plant)).getOrDefault(plant, PlantStock.none(plant));
            Fit fit = judge.fit(query.need(), record, stock, query.now());
            Proposal proposal = index.propose(query.need(), query.words(), Set.of(), query.now(), Why.FARTHEST_PLACE);
            int at = proposal.best().indexOf(plant);
            return new Why(
                    new Match(record, stock, fit),
                    at < 0 ? OptionalInt.empty() : OptionalInt.of(at + 1),
                    proposal.tally().total());
        });
    }

    private List<Match> judged(NeedQuery query, List<PlantKey> keys) {
        List<Match> matches = new ArrayList<>();
        List<Candidate> candidates = plants.read(keys);
        List<Fit> fits = judge.fits(query.need(), candidates, query.now());
        for (int at = 0; at < fits.size(); at++) {
            Candidate candidate = candidates.get(at);
            if (fits.get(at).answers() && !candidate.plant().retired()) {
                matches.add(new Match(candidate.plant(), candidate.stock(), fits.get(at)));
            }
        }
        return matches;
    }
}
