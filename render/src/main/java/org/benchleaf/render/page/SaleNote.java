package org.benchleaf.render.page;

import java.time.LocalDate;
import java.util.Optional;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.RuleKind;
import org.benchleaf.shared.rule.SaleStanding;

/// What one or more states, provinces or counties say about selling the plant.
///
/// @param kind sale, or the quarantine of a pest whose host it is
/// @param area where it holds
/// @param standing how strictly; the word is `standing.` + name
/// @param since first day on which it holds, when known and the same everywhere
/// @param coming whether that day is still to come
/// @param remark exemptions, conditions and the notice to print, in a few words; may be empty
/// @param source who states it, and when the list was compiled
public record SaleNote(
        RuleKind kind,
        RuleArea area,
        SaleStanding standing,
        Optional<LocalDate> since,
        boolean coming,
        String remark,
        Source source) {}
