package org.benchleaf.app.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.catalog.ledger.Balance;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.ItemOutlook;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.YearWeek;

/// The ledger and what can be promised, in words for a terminal.
public final class StockWords {
    private final Wording words;
    private final ZoneId zone;

    /// @param zone of the shop's own time
    public StockWords(Wording words, ZoneId zone) {
        this.words = words;
        this.zone = zone;
    }

    String asOf(LocalDateTime moment) {
        return words.stockAsOf(moment) + ".";
    }

    private String time(Instant moment) {
        return words.time(LocalDateTime.ofInstant(moment, zone));
    }

    /// What became of an entry.
    List<String> entry(LedgerEntry entry, Balance lot, boolean again) {
        Map<String, String> values = new HashMap<>(balance(lot));
        values.put("lot", entry.lot());
        values.put("key", entry.key());
        values.put("what", words.sentence(what(entry.event())));
        List<String> lines = new ArrayList<>();
        lines.add(words.text(again ? "ledger.again" : "ledger.done", values));
        if (lot.held() > lot.count()) {
            lines.add(words.text("ledger.short", Map.of("short", words.count(lot.held() - lot.count()))));
        }
        lines.add(words.text(
                entry.event() instanceof StockEvent.Held ? "ledger.called.hold" : "ledger.called",
                Map.of("key", entry.key())));
        return lines;
    }

    private Map<String, String> balance(Balance lot) {
        return Map.of(
                "count", words.count(lot.count()),
                "held", words.count(lot.held()),
                "free", words.count(lot.free()));
    }

    private String what(StockEvent event) {
        String kind = "ledger.what." + event.kind().name();
        String stated = words.count(event.stated());
        return switch (event) {
            case StockEvent.Held held
            when held.until().isPresent() ->
                words.text(
                        kind + ".until",
                        Map.of("stated", stated, "until", time(held.until().get())));
            case StockEvent.Released released -> words.text(kind, Map.of("stated", stated, "hold", released.hold()));
            case StockEvent.Shipped shipped
            when shipped.hold().isPresent() ->
                words.text(
                        kind + ".hold",
                        Map.of("stated", stated, "hold", shipped.hold().get()));
            case StockEvent.Moved moved -> words.text(kind + ".to", Map.of("stated", stated, "other", moved.to()));
            case StockEvent.Placed placed -> words.text(kind + ".place", Map.of("detail", placed.place()));
            case StockEvent.Ready ready ->
                ready.week()
                        .map(week -> words.text(kind, Map.of("detail", words.week(week))))
                        .orElseGet(() -> words.text(kind + ".now"));
            case StockEvent.Seen seen ->
                words.text(kind, Map.of("detail", words.date(seen.day()) + ": " + words.terms(seen.conditions())));
            default -> words.text(kind, Map.of("stated", stated));
        };
    }

    /// One line of a lot's history.
    String line(LedgerLine line) {
        String what = what(line);
        String change = line.change() == 0 ? "" : String.format("%+d", line.change());
        return "  %-24s %-40s %6s %7s  %s"
                .formatted(
                        time(line.happenedAt()),
                        what,
                        change,
                        words.count(line.count()),
                        (line.who() + "  " + line.why()).strip());
    }

    public String what(LedgerLine line) {
        String kind = "ledger.what." + line.kind().name();
        Map<String, String> values = new HashMap<>(Map.of("stated", words.count(line.stated())));
        values.put("hold", line.hold().orElse(""));
        values.put("other", line.otherLot().orElse(""));
        values.put("detail", line.kind() == LedgerKind.READY ? week(line.detail()) : line.detail());
        values.put("until", line.until().map(this::time).orElse(""));
        return switch (line.kind()) {
            case HELD -> words.text(line.until().isPresent() ? kind + ".until" : kind, values);
            case SHIPPED -> words.text(line.hold().isPresent() ? kind + ".hold" : kind, values);
            case MOVED ->
                words.text(
                        line.otherLot().isEmpty() ? kind + ".place" : line.change() > 0 ? kind + ".from" : kind + ".to",
                        values);
            case READY -> words.text(line.detail().isEmpty() ? kind + ".now" : kind, values);
            default -> words.text(kind, values);
        };
    }

    private String week(String text) {
        return YearWeek.read(text).toOptional().map(words::week).orElse(text);
    }

    public String hold(Hold hold) {
        Map<String, String> values = new HashMap<>(Map.of("count", words.count(hold.quantity())));
        values.put("who", hold.who());
        values.put("key", hold.key());
        values.put("until", hold.until().map(this::time).orElse(""));
        String text = words.text(hold.until().isPresent() ? "ledger.hold" : "ledger.hold.open", values);
        return hold.why().isBlank() ? text : words.text("ledger.hold.why", Map.of("hold", text, "why", hold.why()));
    }

    /// What can be promised of an item, line by line.
    List<String> outlook(ItemOutlook outlook, Optional<Integer> by, Optional<YearWeek> week, LocalDate today) {
        List<String> lines = new ArrayList<>();
        String free = outlook.free() == 0
                ? words.text("outlook.none")
                : words.text("outlook.free", Map.of("count", words.count(outlook.free())));
        lines.add(
                outlook.held() == 0
                        ? free
                        : free
                                + words.text("list.comma")
                                + words.text(
                                        "outlook.held",
                                        Map.of(
                                                "held", words.count(outlook.held()),
                                                "count", words.count(outlook.count()))));
        for (ItemOutlook.Coming coming : outlook.coming()) {
            lines.add(words.text(
                    "outlook.coming",
                    Map.of(
                            "more", words.count(coming.more()),
                            "week", words.week(coming.week()),
                            "total", words.count(coming.total()))));
        }
        by.ifPresent(count -> lines.add(
                words.text("outlook.by", Map.of("count", words.count(count), "week", words.week(week.orElseThrow())))));
        outlook.seen()
                .ifPresent(seen -> lines.add(words.text(
                        "outlook.seen",
                        Map.of(
                                "day", words.date(seen.day()),
                                "age", age(seen.day(), today),
                                "what", words.terms(seen.conditions()),
                                "lot", seen.lot()))));
        return lines;
    }

    private String age(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(day, today);
        if (days < 0) {
            return words.text("age.future");
        }
        return days == 0
                ? words.text("age.today")
                : days == 1 ? words.text("age.yesterday") : words.text("age.days", Map.of("days", words.count(days)));
    }
}
