package org.benchleaf.app.service;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Map;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.site.Exposure;

/// Facts in words that can be read aloud on the telephone: no dashes, units and months in full.
public final class Spoken {
    private static final int COLORS = 3;

    private final Wording words;

    public Spoken(Wording words) {
        this.words = words;
    }

    /// What a fact says.
    public String fact(Fact<?> fact) {
        return value(fact.value());
    }

    private String value(Object value) {
        return switch (value) {
            case LengthRange length -> length(length);
            case MonthSet months -> months(months);
            case ZoneRange zones -> zones.coldest().toString();
            case Enum<?> term -> words.term(term);
            case List<?> list -> list(list);
            case java.util.Set<?> set -> set(set);
            default -> value.toString();
        };
    }

    private String list(List<?> list) {
        List<String> parts = list.stream()
                .limit(COLORS)
                .map(part -> part instanceof PlantColor color ? color.word() : part.toString())
                .toList();
        return parts.isEmpty() ? words.text("substitute.read.none") : words.listOf(parts);
    }

    private String set(java.util.Set<?> set) {
        List<Enum<?>> terms = set.stream()
                .filter(Enum.class::isInstance)
                .<Enum<?>>map(term -> (Enum<?>) term)
                .sorted(java.util.Comparator.comparingInt(Enum::ordinal))
                .toList();
        if (!terms.isEmpty() && terms.getFirst() instanceof Exposure) {
            return words.exposure(set.stream().map(Exposure.class::cast).collect(java.util.stream.Collectors.toSet()));
        }
        return words.listOf(terms.stream().map(words::term).toList());
    }

    /// `3 to 5 feet`.
    public String length(LengthRange range) {
        String written = words.length(range);
        String read = dashes(written);
        for (Map.Entry<String, String> unit : UNITS) {
            if (read.endsWith(unit.getKey())) {
                String number = read.substring(0, read.length() - unit.getKey().length());
                boolean one = number.equals("1");
                String key = "substitute.read."
                        + (one ? unit.getValue().split("/")[1] : unit.getValue().split("/")[0]);
                return words.text(key, Map.of("length", number));
            }
        }
        return read;
    }

    private static final List<Map.Entry<String, String>> UNITS =
            List.of(Map.entry(" ft", "feet/foot"), Map.entry(" in", "inches/inch"));

    /// `April to June`.
    public String months(MonthSet months) {
        if (months.equals(MonthSet.ALL)) {
            return words.text("months.all");
        }
        return words.listOf(months.runs().stream()
                .map(run -> run.getFirst() == run.getLast()
                        ? month(run.getFirst())
                        : to(month(run.getFirst()), month(run.getLast())))
                .toList());
    }

    private String month(Month month) {
        return month.getDisplayName(TextStyle.FULL_STANDALONE, words.language());
    }

    private String dashes(String text) {
        int dash = text.indexOf('–');
        return dash < 0 ? text : to(text.substring(0, dash), text.substring(dash + 1));
    }

    private String to(String from, String last) {
        return words.text("substitute.read.to", Map.of("from", from, "last", last));
    }
}
