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
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.SaleNote;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Jurisdiction;
import org.benchleaf.shared.rule.Phase;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.Ruling;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.Shipment;

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

    /// What must stand beside the plant where it is sold, from the rules of the shop's own place; a shop that does not
    /// say where it is gets one line on all places.
    static List<String> notices(Facts facts, Optional<Destination> place, LocalDate day, Wording words) {
        return facts.value(Attributes.SALE_RULES)
                .map(rules -> place.map(here -> notices(rules, here, day, words))
                        .orElseGet(() -> anywhere(rules, day, words)))
                .orElse(List.of());
    }

    private static List<String> notices(PlantRules rules, Destination here, LocalDate day, Wording words) {
        List<String> notices = new ArrayList<>();
        for (Ruling ruling :
                rules.at(new Shipment(here, day, Optional.of(here))).rulings()) {
            ruling.saleStanding()
                    .filter(standing -> standing != SaleStanding.ADVISED_AGAINST)
                    .ifPresent(standing -> notices.add(words.text(
                                    "sale.notice",
                                    Map.of(
                                            "area", words.area(ruling.match().area()),
                                            "standing", words.text("standing." + standing.name()),
                                            "notice", ruling.match().notice()))
                            .strip()));
        }
        return notices.stream().distinct().toList();
    }

    private static List<String> anywhere(PlantRules rules, LocalDate day, Wording words) {
        List<Jurisdiction> places = rules.matches().stream()
                .filter(match -> match.kind() == RuleKind.SALE
                        && match.dates().saleOn(day) == Phase.IN_FORCE
                        && match.effective().equals(Optional.of(SaleStanding.RESTRICTED)))
                .flatMap(match -> match.area().places().stream())
                .distinct()
                .sorted(Comparator.comparing(Jurisdiction::toString))
                .toList();
        return places.isEmpty()
                ? List.of()
                : List.of(words.text("sale.notice.anywhere", Map.of("areas", words.area(new RuleArea(places)))));
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
