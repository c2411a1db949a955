package org.benchleaf.app.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.render.page.SaleNote;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.rule.Jurisdiction;
import org.benchleaf.shared.rule.Phase;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.SaleStanding;

/// What a sheet says of the law: every rule that holds on its day or is to come, one line for all places that
/// rule alike, so that a plant ruled in many states still fits its sheet. The command `rules` tells each with
/// its own source.
final class SaleNotes {
    /// Longer remarks are left to the command `rules`.
    private static final int LONGEST_REMARK = 70;

    private SaleNotes() {}

    static List<SaleNote> of(Facts facts, LocalDate day) {
        return facts.value(Attributes.SALE_RULES)
                .map(rules -> notes(rules, day))
                .orElse(List.of());
    }

    /// @param standing how strictly the plant is treated
    /// @param coming whether it is still to come
    private record Kind(RuleKind kind, SaleStanding standing, boolean coming) {}

    private static List<SaleNote> notes(PlantRules rules, LocalDate day) {
        Map<Kind, List<RuleMatch>> alike = new LinkedHashMap<>();
        for (RuleMatch match : rules.matches()) {
            Phase phase = match.dates().saleOn(day);
            Optional<SaleStanding> standing = match.effective();
            if (phase != Phase.ENDED && standing.isPresent()) {
                alike.computeIfAbsent(
                                new Kind(match.kind(), standing.get(), phase == Phase.COMING),
                                fresh -> new ArrayList<>())
                        .add(match);
            }
        }
        Source source = new Source("sale rules, list compiled on " + rules.compiledOn());
        return alike.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<Kind, List<RuleMatch>> entry) ->
                                entry.getKey().kind())
                        .thenComparing(entry -> entry.getKey().standing())
                        .thenComparing(entry -> entry.getKey().coming()))
                .map(entry -> note(entry.getKey(), entry.getValue(), source))
                .toList();
    }

    private static SaleNote note(Kind kind, List<RuleMatch> matches, Source source) {
        List<Jurisdiction> places = matches.stream()
                .flatMap(match -> match.area().places().stream())
                .distinct()
                .sorted(Comparator.comparing(Jurisdiction::toString))
                .toList();
        List<Optional<LocalDate>> days = matches.stream()
                .map(match -> match.dates().saleFrom())
                .distinct()
                .toList();
        List<String> remarks = matches.stream()
                .map(RuleMatch::notice)
                .distinct()
                .filter(notice -> notice.length() <= LONGEST_REMARK)
                .toList();
        return new SaleNote(
                kind.kind(),
                new RuleArea(places),
                kind.standing(),
                days.size() == 1 ? days.getFirst() : Optional.empty(),
                kind.coming(),
                matches.size() == 1 && remarks.size() == 1 ? remarks.getFirst() : "",
                source);
    }
}
