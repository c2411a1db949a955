package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.content.Wording;
import org.benchleaf.search.Match;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.Relaxation;
import org.benchleaf.search.fit.Loosening;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.search.need.Note;
import org.benchleaf.search.need.OtherReading;
import org.benchleaf.search.need.Understood;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.PlantRules;
import org.benchleaf.shared.stock.Availability;

/// An answer as text for a terminal: what was read, then each plant with its reasons and stock.
final class AnswerText {
    private static final int ITEMS_SHOWN = 4;

    private final Wording wording;

    AnswerText(Wording wording) {
        this.wording = wording;
    }

    void write(
            NeedReading reading, List<WeighedWish> wishes, NeedAnswer answer, int skip, YearWeek now, PrintWriter out) {
        writeReading(reading, wishes, out);
        if (wishes.isEmpty() && answer.total() == 0) {
            out.println(wording.text("answer.no-wish"));
            return;
        }
        out.println(wording.text(
                "answer.count",
                Map.of(
                        "all", wording.count(answer.meetAll()),
                        "none", wording.count(answer.missNone()),
                        "total", wording.count(answer.total()))));
        int place = skip;
        for (Match match : answer.matches()) {
            place++;
            out.println();
            out.print(pad(place + ".", 3) + " ");
            writeMatch(match, now, out);
        }
        writeLoosenings(answer, out);
        shipped(wishes, answer).ifPresent(compiledOn -> {
            out.println();
            out.println(wording.saleCaution(compiledOn));
        });
        if (!answer.relaxations().isEmpty()) {
            out.println();
            out.println(wording.text("answer.give-up"));
            for (Relaxation relaxation : answer.relaxations()) {
                String wish = relaxation.giveUp().stream().map(wording::wish).collect(Collectors.joining(" + "));
                out.println("  "
                        + wording.text(
                                "answer.brings", Map.of("wish", wish, "more", wording.count(relaxation.more()))));
            }
        }
    }

    private void writeLoosenings(NeedAnswer answer, PrintWriter out) {
        if (!answer.loosenings().isEmpty()) {
            out.println();
            out.println(wording.text("answer.loosen"));
        }
        for (Loosening loosening : answer.loosenings()) {
            out.println("  "
                    + wording.text(
                            "answer.loosened",
                            Map.of(
                                    "wish", wording.wish(loosening.wish()),
                                    "to", wording.wish(loosening.loosened()),
                                    "more", wording.count(loosening.more()))));
        }
    }

    /// When the lists were compiled by which a wish to ship was judged; empty when nothing was to be shipped.
    private static Optional<LocalDate> shipped(List<WeighedWish> wishes, NeedAnswer answer) {
        return wishes.stream().anyMatch(wish -> wish.wish() instanceof Wish.ShipTo)
                ? answer.matches().stream()
                        .flatMap(match -> match.plant().facts().value(Attributes.SALE_RULES).stream())
                        .map(PlantRules::compiledOn)
                        .findFirst()
                : Optional.empty();
    }

    void writeReading(NeedReading reading, List<WeighedWish> wishes, PrintWriter out) {
        int widest = reading.understood().stream()
                .mapToInt(one -> one.words().length())
                .max()
                .orElse(0);
        for (Understood one : reading.understood()) {
            out.println("  " + pad(one.words(), widest) + "  →  " + wording.wish(one.wish()));
        }
        wishes.stream()
                .filter(wish -> reading.need().wishes().stream().noneMatch(wish::equals))
                .forEach(wish ->
                        out.println("  " + pad(wording.text("answer.option"), widest) + "  →  " + wording.wish(wish)));
        for (Note note : reading.notes()) {
            out.println("  "
                    + wording.text("need.note." + note.key(), Map.of("words", note.words(), "read", note.readAs())));
        }
        for (OtherReading other : reading.others()) {
            String meant = other.wishes().stream().map(wording::wish).collect(Collectors.joining(" + "));
            out.println("  " + wording.text("answer.other", Map.of("words", other.words(), "wish", meant)));
        }
        if (!reading.notUnderstood().isEmpty()) {
            out.println("  "
                    + wording.text(
                            "answer.not-understood", Map.of("words", String.join(", ", reading.notUnderstood()))));
        }
        out.println();
    }

    void writeMatch(Match match, YearWeek now, PrintWriter out) {
        PlantRecord plant = match.plant();
        String common =
                plant.commonName(wording.language()).map(name -> ", " + name).orElse("");
        out.println(plant.name() + common + "  [" + plant.key() + "]");
        // two wishes met by one fact, such as both ends of a height, are said once
        match.fit().reasons().stream().map(this::reason).distinct().forEach(out::println);
        out.println("    " + stock(match.stock(), now));
    }

    private String reason(Reason reason) {
        String mark = switch (reason) {
            case Reason.Met met -> "✓";
            case Reason.Missed missed -> "✗";
            case Reason.Unknown unknown -> "?";
        };
        return "    " + mark + " " + wording.reason(reason);
    }

    /// What can be had of it now, the sizes in the order of a price list.
    String stock(PlantStock stock, YearWeek now) {
        List<String> lines = stock.items().stream()
                .filter(item -> !(stock.availability(item.key(), now) instanceof Availability.SoldOut))
                .map(item -> item(stock, item, now))
                .toList();
        if (lines.isEmpty()) {
            return wording.text(stock.items().isEmpty() ? "answer.not-grown" : "answer.sold-out");
        }
        String shown = lines.stream().limit(ITEMS_SHOWN).collect(Collectors.joining("; "));
        return lines.size() > ITEMS_SHOWN ? shown + "; …" : shown;
    }

    private String item(PlantStock stock, ItemRecord item, YearWeek now) {
        String price = item.price().map(money -> ", " + wording.money(money)).orElse("");
        return wording.size(item.size()) + ": " + wording.availability(stock.availability(item.key(), now)) + price;
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
