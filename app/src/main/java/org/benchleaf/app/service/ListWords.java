package org.benchleaf.app.service;

import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;

/// What is said of a plant list, on a terminal and on a page.
public final class ListWords {
    private final Wording words;

    public ListWords(Wording words) {
        this.words = words;
    }

    /// What is seen in a month, each season with the numbers of its lines; empty when nothing is.
    public record InMonth(String month, String seen) {}

    /// Where and when it is planted, in a few words; empty when nothing is known.
    public String site(ListSite site) {
        List<String> parts = new ArrayList<>();
        site.zone().map(Wish.HardyIn::new).map(words::wish).ifPresent(parts::add);
        site.light().map(words::term).ifPresent(parts::add);
        site.soil().map(Wish.LikesSoil::new).map(words::wish).ifPresent(parts::add);
        site.shipTo()
                .map(place -> words.text("list.ship-to", Map.of("place", place.toString())))
                .ifPresent(parts::add);
        site.by()
                .map(week -> words.text("list.by", Map.of("week", words.week(week))))
                .ifPresent(parts::add);
        return String.join("; ", parts);
    }

    /// The twelve months.
    public List<InMonth> months(ListReport report) {
        List<InMonth> months = new ArrayList<>();
        for (Month month : Month.values()) {
            Map<Season, List<String>> seen = new LinkedHashMap<>();
            for (ListReport.Seen one : report.months().getOrDefault(month, List.of())) {
                seen.computeIfAbsent(one.season(), fresh -> new ArrayList<>()).add(Integer.toString(one.line()));
            }
            String what = seen.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .map(entry -> words.term(entry.getKey()) + " "
                            + entry.getValue().stream().distinct().collect(Collectors.joining(", ")))
                    .collect(Collectors.joining("; "));
            months.add(new InMonth(words.text("month." + month), what));
        }
        return months;
    }

    /// The months in which nothing is seen, as a sentence.
    public Optional<String> bare(ListReport report) {
        if (report.bareMonths().isEmpty() || report.lines().isEmpty()) {
            return Optional.empty();
        }
        int bits = report.bareMonths().stream()
                .mapToInt(month -> 1 << month.ordinal())
                .sum();
        return Optional.of(words.text("list.bare", Map.of("months", new Spoken(words).months(new MonthSet(bits)))));
    }
}
