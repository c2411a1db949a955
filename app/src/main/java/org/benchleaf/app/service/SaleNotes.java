package org.benchleaf.app.service;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.render.page.SaleNote;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.rule.Phase;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.SaleStanding;

/// What a sheet says of the law: every rule that holds on its day or is to come.
final class SaleNotes {
    private SaleNotes() {}

    static List<SaleNote> of(Facts facts, LocalDate day) {
        return facts.value(Attributes.SALE_RULES).stream()
                .flatMap(rules -> rules.matches().stream())
                .filter(match -> match.dates().saleOn(day) != Phase.ENDED)
                .flatMap(match -> note(match, day).stream())
                .sorted(Comparator.comparing(SaleNote::standing)
                        .thenComparing(note -> note.area().toString()))
                .toList();
    }

    /// An exempt plant has no note, nor has one whose name does not say enough: the command `rules` tells what to ask.
    private static Optional<SaleNote> note(RuleMatch match, LocalDate day) {
        return switch (match.manner()) {
            case EXEMPT, UNCLEAR -> Optional.empty();
            case NAMED, OTHER_NAME, HYBRID, CONDITIONALLY_EXEMPT ->
                match.effective().map(standing -> note(match, standing, day));
        };
    }

    private static SaleNote note(RuleMatch match, SaleStanding standing, LocalDate day) {
        String source = match.source().text() + "; list compiled on " + match.compiledOn();
        return new SaleNote(
                match.area(),
                match.kind() == RuleKind.QUARANTINE ? SaleStanding.RESTRICTED : standing,
                match.dates().saleFrom(),
                match.dates().saleOn(day) == Phase.COMING,
                match.notice(),
                new Source(source));
    }
}
