package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.NeedPage;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.stock.Availability;

/// Puts the page that answers a need into words.
public final class NeedViews {
    private static final int SIZES_SHOWN = 4;

    private final Wording words;

    public NeedViews(Wording words) {
        this.words = words;
    }

    public NeedView view(NeedPage page) {
        return new NeedView(
                page.asked().stream().map(this::asked).toList(),
                remarks(page),
                page.names().stream()
                        .map(named ->
                                new NeedView.Named(Typesetter.line(named.name(), true), named.matched(), named.path()))
                        .toList(),
                page.tally()
                        .map(tally -> words.text(
                                "answer.count",
                                Map.of(
                                        "all", words.count(tally.all()),
                                        "none", words.count(tally.none()),
                                        "total", words.count(tally.total()))))
                        .orElse(""),
                page.found().stream().map(this::found).toList(),
                page.why().map(this::found).stream().toList(),
                page.offers().stream().map(this::offer).toList(),
                page.narrowings());
    }

    private NeedView.Asked asked(NeedPage.Asked asked) {
        String wish = words.wish(asked.wish());
        return new NeedView.Asked(
                asked.words(), wish, asked.without(), words.text("web.find.without", Map.of("wish", wish)));
    }

    private List<String> remarks(NeedPage page) {
        List<String> remarks = new ArrayList<>();
        if (!page.notUnderstood().isEmpty()) {
            remarks.add(words.sentence(
                    words.text("answer.not-understood", Map.of("words", String.join(", ", page.notUnderstood())))));
        }
        remarks.addAll(page.remarks());
        page.others()
                .forEach(other -> remarks.add(words.text(
                        "answer.other",
                        Map.of(
                                "words",
                                other.words(),
                                "wish",
                                other.wishes().stream().map(words::wish).collect(Collectors.joining(" + "))))));
        return remarks;
    }

    private NeedView.Found found(NeedPage.Found found) {
        return new NeedView.Found(
                found.place() == 0 ? "" : Integer.toString(found.place()),
                Typesetter.line(found.name(), true),
                found.common(),
                found.path(),
                // two wishes met by one fact, such as both ends of a height, are said once
                found.reasons().stream().map(this::line).distinct().toList(),
                stock(found.stock()),
                found.stock().stream().anyMatch(item -> item.availability() instanceof Availability.InStock));
    }

    private NeedView.Line line(Reason reason) {
        return switch (reason) {
            case Reason.Met met -> new NeedView.Line("met", words.text("web.find.met"), words.reason(reason));
            case Reason.Missed missed ->
                new NeedView.Line("missed", words.text("web.find.missed"), words.reason(reason));
            case Reason.Unknown unknown ->
                new NeedView.Line("unknown", words.text("web.find.unknown"), words.reason(reason));
        };
    }

    private String stock(List<ItemLine> items) {
        List<String> lines = items.stream()
                .filter(item -> !(item.availability() instanceof Availability.SoldOut))
                .map(this::item)
                .toList();
        if (lines.isEmpty()) {
            return words.text(items.isEmpty() ? "answer.not-grown" : "answer.sold-out");
        }
        String shown = lines.stream().limit(SIZES_SHOWN).collect(Collectors.joining("; "));
        return lines.size() > SIZES_SHOWN ? shown + "; …" : shown;
    }

    private String item(ItemLine item) {
        String price = item.price()
                .flatMap(words.telling()::price)
                .map(money -> words.text("list.comma") + words.money(money))
                .orElse("");
        return words.size(item.size(), item.form()) + ": " + words.availability(item.availability()) + price;
    }

    private NeedView.Offer offer(NeedPage.Offer offer) {
        String more = words.count(offer.more());
        if (offer.loosened().size() == 2) {
            return new NeedView.Offer(
                    words.text(
                            "answer.loosened",
                            Map.of(
                                    "wish",
                                    words.wish(offer.loosened().getFirst()),
                                    "to",
                                    words.wish(offer.loosened().getLast()),
                                    "more",
                                    more)),
                    offer.path());
        }
        String wishes = offer.giveUp().stream().map(words::wish).collect(Collectors.joining(" + "));
        return new NeedView.Offer(words.text("web.find.give-up", Map.of("wish", wishes, "more", more)), offer.path());
    }
}
