package org.benchleaf.shared.rule;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.fact.Source;

/// One rule as it bears on one plant.
///
/// @param rule the rule's id within its list
/// @param kind what it is about
/// @param area where it holds
/// @param standing how strictly, before exemptions
/// @param manner how the plant came under it
/// @param listedAs the name in the rule that took the plant in
/// @param dates from when
/// @param notice the notice to print, a condition or a remark; may be empty
/// @param source who states it
/// @param compiledOn the day on which the list was compiled: what became law later is not in it
public record RuleMatch(
        String rule,
        RuleKind kind,
        RuleArea area,
        SaleStanding standing,
        Manner manner,
        String listedAs,
        RuleDates dates,
        String notice,
        Source source,
        LocalDate compiledOn) {
    private static final String FIELD = "\u001d";
    private static final int FIELDS = 13;

    /// How strictly the plant is treated; empty when it is exempt, or its name does not say enough.
    public Optional<SaleStanding> effective() {
        return switch (manner) {
            case NAMED, OTHER_NAME, HYBRID -> Optional.of(standing);
            case CONDITIONALLY_EXEMPT ->
                Optional.of(standing == SaleStanding.PROHIBITED ? SaleStanding.RESTRICTED : standing);
            case EXEMPT, UNCLEAR -> Optional.empty();
        };
    }

    /// One line that [#read] reads back.
    String write() {
        return String.join(
                FIELD,
                rule,
                kind.term(),
                area.toString(),
                standing.term(),
                manner.term(),
                listedAs,
                day(dates.listed()),
                day(dates.receipt()),
                day(dates.sale()),
                day(dates.until()),
                notice,
                source.text(),
                compiledOn.toString());
    }

    static Reading<RuleMatch> read(String text) {
        String[] cells = text.split(FIELD, -1);
        if (cells.length != FIELDS) {
            return Reading.refused("rules.text", text);
        }
        try {
            RuleDates dates = new RuleDates(day(cells[6]), day(cells[7]), day(cells[8]), day(cells[9]));
            return Reading.of(new RuleMatch(
                    cells[0],
                    Term.read(RuleKind.class, cells[1]).orThrow(),
                    RuleArea.read(cells[2]).orThrow(),
                    Term.read(SaleStanding.class, cells[3]).orThrow(),
                    Term.read(Manner.class, cells[4]).orThrow(),
                    cells[5],
                    dates,
                    cells[10],
                    new Source(cells[11]),
                    LocalDate.parse(cells[12])));
        } catch (IllegalArgumentException | DateTimeParseException broken) {
            return new Reading.Refused<>(
                    Problem.of("rules.text", text).with("cause", String.valueOf(broken.getMessage())));
        }
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    private static Optional<LocalDate> day(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    }
}
