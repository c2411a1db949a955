package org.benchleaf.catalog.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.rule.Manner;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;

/// All rules in force or to come, and which of them bear on a plant. Immutable; safe for many threads.
public final class SaleRuleBook {
    private static final SaleRuleBook EMPTY = new SaleRuleBook(List.of());

    private final List<SaleRule> rules;
    private final Map<String, List<Entry>> byGenus = new HashMap<>();
    private final Set<Region> covered = new TreeSet<>();
    private final Optional<LocalDate> compiledOn;
    private final HybridParents parents = new HybridParents();
    /// Most plants stand in no list; they share this.
    private final Optional<PlantRules> nothing;

    private SaleRuleBook(List<SaleRule> rules) {
        this.rules = List.copyOf(rules);
        for (SaleRule rule : rules) {
            Entry entry = Entry.of(rule);
            entry.names().stream()
                    .map(listed -> NameStem.fold(listed.name().genus()))
                    .distinct()
                    .forEach(genus -> byGenus.computeIfAbsent(genus, fresh -> new ArrayList<>())
                            .add(entry));
            if (rule.kind() == RuleKind.SALE) {
                rule.area().places().stream()
                        .filter(place -> place.county().isEmpty())
                        .flatMap(place -> place.region().stream())
                        .forEach(covered::add);
            }
        }
        this.compiledOn = rules.stream().map(SaleRule::compiledOn).max(Comparator.naturalOrder());
        this.nothing = compiledOn.map(day -> new PlantRules(List.of(), covered, day));
    }

    public static SaleRuleBook empty() {
        return EMPTY;
    }

    public static SaleRuleBook of(Collection<SaleRule> rules) {
        return rules.isEmpty() ? EMPTY : new SaleRuleBook(List.copyOf(rules));
    }

    public List<SaleRule> rules() {
        return rules;
    }

    public boolean isEmpty() {
        return rules.isEmpty();
    }

    /// Whether some rule names a plant of this genus.
    public boolean knowsGenus(String genus) {
        return byGenus.containsKey(NameStem.fold(genus));
    }

    /// The rules that bear on a plant.
    ///
    /// @param name its accepted name
    /// @param synonyms other names of it or of its taxon, as written
    /// @return empty when there are no lists at all
    public Optional<PlantRules> of(BotanicalName name, Collection<String> synonyms) {
        if (compiledOn.isEmpty()) {
            return Optional.empty();
        }
        List<BotanicalName> others = synonyms.stream()
                .filter(text -> byGenus.containsKey(genusOf(text)))
                .flatMap(text -> NameReader.read(text).known().stream())
                .toList();
        List<RuleMatch> matches = new ArrayList<>();
        Stream.concat(Stream.of(name), others.stream())
                .flatMap(one -> byGenus.getOrDefault(NameStem.fold(one.genus()), List.of()).stream())
                .distinct()
                .forEach(entry -> match(entry, name, others).ifPresent(matches::add));
        if (matches.isEmpty()) {
            return nothing;
        }
        matches.sort(Comparator.comparing(RuleMatch::rule));
        return Optional.of(new PlantRules(matches, covered, compiledOn.get()));
    }

    private static String genusOf(String text) {
        String[] words = text.strip().split("\\s+");
        boolean marked = words.length > 1 && words[0].matches("[×xX+]");
        return NameStem.fold(words[marked ? 1 : 0].replaceFirst("^[×+]", ""));
    }

    private Optional<RuleMatch> match(Entry entry, BotanicalName name, List<BotanicalName> others) {
        SaleRule rule = entry.rule();
        Optional<Found> found = find(entry, name, others);
        boolean cultivated =
                name.cultivar().isPresent() || name.tradeDesignation().isPresent();
        if (found.isEmpty() || cultivated && !rule.cultivars()) {
            return Optional.empty();
        }
        Optional<Exemption> exempt = rule.exempt().stream()
                .filter(exemption ->
                        Stream.concat(Stream.of(name), others.stream()).anyMatch(exemption::means))
                .findFirst();
        Manner manner = exempt.map(one -> one.condition().isEmpty() ? Manner.EXEMPT : Manner.CONDITIONALLY_EXEMPT)
                .orElse(found.get().manner());
        String notice = exempt.map(Exemption::toString).orElse(rule.notice());
        return Optional.of(new RuleMatch(
                rule.id(),
                rule.kind(),
                rule.area(),
                rule.standing(),
                manner,
                found.get().listedAs(),
                rule.dates(),
                notice,
                rule.source(),
                rule.compiledOn()));
    }

    private record Found(Manner manner, String listedAs) {}

    private Optional<Found> find(Entry entry, BotanicalName name, List<BotanicalName> others) {
        Optional<Found> best = Optional.empty();
        for (ListedName listed : entry.names()) {
            switch (listed.nearness(name)) {
                case WITHIN -> {
                    boolean same =
                            listed.spells(name) || listed.name().species().isEmpty();
                    return Optional.of(new Found(same ? Manner.NAMED : Manner.OTHER_NAME, listed.text()));
                }
                case NOT_SAID -> best = best.or(() -> Optional.of(new Found(Manner.UNCLEAR, listed.text())));
                case HYBRID -> best = best.or(() -> hybrid(entry.rule(), listed, name));
                case OUTSIDE -> {}
            }
        }
        for (ListedName listed : entry.names()) {
            if (others.stream().anyMatch(other -> listed.nearness(other) == ListedName.Nearness.WITHIN)) {
                return Optional.of(new Found(Manner.OTHER_NAME, listed.text()));
            }
        }
        return best;
    }

    private Optional<Found> hybrid(SaleRule rule, ListedName listed, BotanicalName name) {
        if (!rule.hybrids()) {
            return Optional.empty();
        }
        Optional<List<BotanicalName>> known = parents.of(name);
        if (known.isEmpty()) {
            return Optional.of(new Found(Manner.UNCLEAR, listed.text()));
        }
        return known.get().stream().anyMatch(parent -> listed.nearness(parent) == ListedName.Nearness.WITHIN)
                ? Optional.of(new Found(Manner.HYBRID, listed.text()))
                : Optional.empty();
    }

    /// A rule with its names read.
    private record Entry(SaleRule rule, List<ListedName> names) {
        static Entry of(SaleRule rule) {
            return new Entry(
                    rule,
                    Stream.concat(Stream.of(rule.taxon()), rule.alsoNamed().stream())
                            .flatMap(text ->
                                    NameReader.read(text).known().stream().map(name -> ListedName.of(text, name)))
                            .toList());
        }
    }
}
