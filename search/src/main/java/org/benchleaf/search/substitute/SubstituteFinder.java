package org.benchleaf.search.substitute;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.Match;
import org.benchleaf.search.PlantsAtHand;
import org.benchleaf.search.fit.Candidate;
import org.benchleaf.search.fit.Fit;
import org.benchleaf.search.fit.FitJudge;
import org.benchleaf.search.index.Named;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.index.Proposal;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Sex;
import org.benchleaf.shared.rule.SaleVerdict;

/// Finds what can take a plant's place: its role becomes a need, the index ranks all plants for it, and the
/// best are read from the catalog, judged and compared. Safe for many threads.
public final class SubstituteFinder {
    /// So many more than asked for are read at a time, until enough are found: some are of one species.
    private static final int MORE_AT_ONCE = 3;

    private static final int FEW = 24;
    private static final int FARTHEST = 400;
    private static final int OF_ONE_GENUS = 2;
    /// Sisters looked at: a species has seldom more.
    private static final int MOST_KIN = 60;

    private final PlantsAtHand plants;
    private final PlantIndex index;
    private final PublishedAdvice published;
    private final Troubles troubles = Troubles.builtIn();
    private final FitJudge judge = new FitJudge();

    public SubstituteFinder(CatalogView catalog, PlantIndex index) {
        this(new PlantsAtHand(catalog), index, PublishedAdvice.builtIn());
    }

    /// @param plants shared with others who answer from the same catalog
    /// @param published what is advised to be planted instead of what
    public SubstituteFinder(PlantsAtHand plants, PlantIndex index, PublishedAdvice published) {
        this.plants = plants;
        this.index = index;
        this.published = published;
    }

    /// Whether it answers with these lists.
    public boolean knows(PublishedAdvice lists) {
        return published == lists;
    }

    /// One that knows other lists and shares all else.
    public SubstituteFinder knowing(PublishedAdvice other) {
        return new SubstituteFinder(plants, index, other);
    }

    /// The best substitutes. Never among them: what the sale rules bar from the place, what is known not to be
    /// hardy at the site asked for, what cannot be had, and, in the place of a plant that is unwelcome, another
    /// one that is.
    public SubstituteAnswer find(SubstituteQuery query) {
        index.freshen();
        PlantKey originalKey = query.original().key();
        List<PlantKey> kin = kin(query.original());
        Map<PlantKey, Candidate> sisters = read(with(originalKey, kin));
        PlantStock usual = Optional.ofNullable(sisters.get(originalKey))
                .map(Candidate::stock)
                .orElseGet(() -> PlantStock.none(originalKey));
        Advice advice = published.insteadOf(
                query.original().name(),
                query.shipment().map(shipment -> shipment.to().region()));
        boolean grown = kin.stream()
                .flatMap(key -> Stream.ofNullable(sisters.get(key)))
                .anyMatch(sister -> !sister.stock().items().isEmpty());
        Role role = RoleReader.read(query.original(), query.purpose(), grown);
        Need need = RoleNeed.of(query, role, advice);
        int few = FEW + 2 * query.limit();
        Proposal proposal = index.propose(need, "", Set.of(), query.now(), few);
        Search search = new Search(query, role, need, usual, advice);
        search.look(kin, sisters);
        search.look(proposal.best(), kin);
        if (!search.hasEnough() && proposal.best().size() >= few) {
            // the best are of few species: look further
            List<PlantKey> more =
                    index.propose(need, "", Set.of(), query.now(), FARTHEST).best();
            search.look(more.subList(Math.min(few, more.size()), more.size()), kin);
        }
        return search.answer(proposal);
    }

    /// Plants of the same species, by the words of their names.
    private List<PlantKey> kin(PlantRecord original) {
        List<String> words = new ArrayList<>(List.of(fold(original.name().genus())));
        original.name()
                .species()
                .ifPresent(species -> words.addAll(List.of(fold(species.text()).split("-"))));
        return index.withWords(words, MOST_KIN).stream().map(Named::plant).toList();
    }

    /// Plants with their stock, all in one reading.
    private Map<PlantKey, Candidate> read(Collection<PlantKey> keys) {
        Map<PlantKey, Candidate> read = new LinkedHashMap<>();
        plants.read(keys).forEach(known -> read.put(known.plant().key(), known));
        return read;
    }

    private static Set<PlantKey> with(PlantKey one, List<PlantKey> others) {
        Set<PlantKey> all = new LinkedHashSet<>(others);
        all.add(one);
        return all;
    }

    private static String fold(String latin) {
        return latin.toLowerCase(java.util.Locale.ROOT);
    }

    /// One search under way.
    private final class Search {
        private final SubstituteQuery query;
        private final Role role;
        private final Need need;
        private final PlantStock usual;
        private final Advice advice;
        private final List<Substitute> found = new ArrayList<>();
        private final List<PlantRecord> passedOver = new ArrayList<>();
        private final Set<String> species = new HashSet<>();
        private final Map<String, Integer> genera = new HashMap<>();

        Search(SubstituteQuery query, Role role, Need need, PlantStock usual, Advice advice) {
            this.query = query;
            this.advice = advice;
            this.role = role;
            this.need = need;
            this.usual = usual;
        }

        /// Looks through proposals, best first, until there are enough.
        ///
        /// @param seen those that were looked at already
        void look(List<PlantKey> proposed, List<PlantKey> seen) {
            List<PlantKey> others = new ArrayList<>(proposed);
            others.removeAll(new HashSet<>(seen));
            int atOnce = query.limit() + MORE_AT_ONCE;
            for (int from = 0; from < others.size() && !hasEnough(); from += atOnce) {
                List<PlantKey> some = others.subList(from, Math.min(others.size(), from + atOnce));
                look(some, read(some));
            }
        }

        /// Judges and compares some plants, and keeps those that will do.
        void look(List<PlantKey> keys, Map<PlantKey, Candidate> read) {
            List<Candidate> others = keys.stream()
                    .flatMap(key -> Stream.ofNullable(read.get(key)))
                    .filter(this::isAnother)
                    .toList();
            List<Fit> fits = judge.fits(need, others, query.now());
            List<Match> matches = new ArrayList<>();
            for (int at = 0; at < fits.size(); at++) {
                if (fits.get(at).answers()) {
                    matches.add(new Match(others.get(at).plant(), others.get(at).stock(), fits.get(at)));
                }
            }
            matches.sort(Comparator.comparing(Match::fit));
            matches.forEach(this::take);
        }

        private boolean isAnother(Candidate known) {
            PlantRecord plant = known.plant();
            PlantRecord original = query.original();
            return !plant.retired()
                    && !plant.key().equals(original.key())
                    && !plant.name().equals(original.name());
        }

        private void take(Match match) {
            PlantRecord plant = match.plant();
            Kin kin = Kin.of(query.original(), plant);
            if (role.unwelcome() && Welcome.isUnwelcome(plant.facts())) {
                passedOver.add(plant);
                return;
            }
            if (isAGuess(plant.name()) || cannotFruit(plant.facts())) {
                return;
            }
            // of another species the best one stands for all
            if (kin != Kin.OTHER_SPECIES || isNew(plant.name())) {
                found.add(substitute(match, kin));
            }
        }

        /// Of an original of which nothing is known but its name, only its genus and what lists name tell anything.
        private boolean isAGuess(BotanicalName name) {
            boolean nothingKnown = query.purpose().equals(Purpose.NOT_SAID)
                    && query.original().facts().all().stream()
                            .allMatch(fact -> fact.attribute().equals(Attributes.SALE_RULES));
            return nothingKnown
                    && !name.genus().equals(query.original().name().genus())
                    && advice.publishersOf(name).isEmpty();
        }

        /// A male holly is no substitute for berries.
        private boolean cannotFruit(Facts facts) {
            return role.seasons().contains(Season.FRUIT)
                    && isMale(facts)
                    && !isMale(query.original().facts());
        }

        private static boolean isMale(Facts facts) {
            return facts.value(Attributes.SEX).filter(Sex.MALE::equals).isPresent();
        }

        /// One of a species, and few of a genus, so that a customer who does not care for one has something
        /// else.
        private boolean isNew(BotanicalName name) {
            return genera.getOrDefault(name.genus(), 0) < OF_ONE_GENUS
                    && species.add(Kin.species(name))
                    && genera.merge(name.genus(), 1, Integer::sum) > 0;
        }

        private Substitute substitute(Match match, Kin kin) {
            PlantRecord plant = match.plant();
            Optional<SaleVerdict> sale = query.shipment()
                    .flatMap(to -> plant.facts().value(Attributes.SALE_RULES).map(rules -> rules.at(to)));
            return new Substitute(
                    match,
                    kin,
                    Comparer.compare(query.original().facts(), plant.facts(), role),
                    Offer.of(match.stock(), usual, query.demand(), query.now()),
                    Hazards.beyond(query.original().facts(), plant.facts()),
                    troubles.shared(query.original().name(), plant.name()),
                    kin == Kin.OTHER_SPECIES ? advice.publishersOf(plant.name()) : List.of(),
                    sale);
        }

        boolean hasEnough() {
            return species.size() >= query.limit();
        }

        SubstituteAnswer answer(Proposal proposal) {
            found.sort(Comparator.comparing(one -> one.match().fit()));
            List<Substitute> all = new ArrayList<>();
            for (Kin kin : Kin.values()) {
                found.stream()
                        .filter(one -> one.kin() == kin)
                        .limit(query.limit())
                        .forEach(all::add);
            }
            List<Substitute> best = found.stream().limit(query.limit()).toList();
            return new SubstituteAnswer(
                    proposal.revision(),
                    usual,
                    role,
                    need,
                    best,
                    all,
                    passedOver.stream().limit(query.limit()).toList());
        }
    }
}
