package org.benchleaf.app.web.staff;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.cli.StockWords;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.ledger.Hold;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.LedgerLine;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.LotRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.shared.Problem;

/// What there is: lots, their holds and history, and entries of the ledger. An entry's key is made with
/// its form, so that a form sent twice counts once.
final class StockPages {
    private static final Access LOOK = new Access.SignedIn(Right.LOOK);
    private static final Access WALK = new Access.SignedIn(Right.WALK);
    private static final int HISTORY = 60;
    private static final int MOST = 1_000_000;

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final PlantSearch search;

    StockPages(Desk desk, PlantSearch search) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.search = search;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/stock", LOOK, Keeping.NEVER, Headers.PAGE, this::list),
                Route.get("/desk/stock/lot", LOOK, Keeping.NEVER, Headers.PAGE, this::lot),
                Route.post("/desk/stock/lot", WALK, Headers.PAGE, this::enter));
    }

    /// @param lots of one plant
    public record Found(PlantSearch.Hit plant, List<LotRow> lots) {}

    /// One lot, in words.
    public record LotRow(
            String lot,
            String path,
            String size,
            String place,
            String count,
            String held,
            String free,
            String ready,
            String seen) {}

    private Reply list(Request request) {
        String words = request.query("q").orElse("").strip();
        Optional<LotRecord> named =
                words.isEmpty() ? Optional.empty() : benchleaf.ledger().lot(words);
        if (named.isPresent()) {
            return Reply.seeOther(path(named.get().lot()));
        }
        List<Found> found = new ArrayList<>();
        for (PlantSearch.Hit hit : search.find(words)) {
            PlantStock stock = search.stock(hit.record());
            found.add(new Found(
                    hit, stock.lots().stream().map(lot -> row(stock, lot)).toList()));
        }
        return desk.page(request, "stock", "desk.way.stock", Map.of("q", words, "found", found));
    }

    static String path(String lot) {
        return "/desk/stock/lot?lot=" + PlantSearch.encoded(lot);
    }

    private LotRow row(PlantStock stock, LotRecord lot) {
        var words = desk.wording();
        String size = stock.items().stream()
                .filter(item -> item.key().equals(lot.item()))
                .map(item -> words.size(item.size(), item.form()))
                .findFirst()
                .orElse("");
        String seen = lot.seenOn()
                .map(day -> words.date(day) + (lot.conditions().isEmpty() ? "" : ": " + words.terms(lot.conditions())))
                .orElse("");
        return new LotRow(
                lot.lot(),
                path(lot.lot()),
                size,
                lot.place(),
                words.count(lot.count()),
                words.count(lot.held()),
                words.count(lot.free()),
                lot.ready().map(words::week).orElse(""),
                seen);
    }

    private Reply lot(Request request) {
        return lot(request, request.query("lot").orElse(""), Optional.empty(), "");
    }

    /// @param sent what was sent in and refused: typed once, it is not typed again
    private Reply lot(Request request, String number, Optional<Entry> sent, String trouble) {
        Optional<LotRecord> lot = benchleaf.ledger().lot(number);
        if (lot.isEmpty()) {
            return Reply.missing();
        }
        PlantRecord plant = benchleaf.catalog().plant(lot.get().item().plant()).orElseThrow();
        PlantStock stock = search.stock(plant);
        StockWords words = new StockWords(desk.wording(), benchleaf.zone());
        List<HoldRow> holds = benchleaf.ledger().holds(number).stream()
                .map(hold -> holdRow(hold, words))
                .toList();
        List<HistoryRow> history = benchleaf.ledger().history(number, HISTORY).reversed().stream()
                .map(line -> historyRow(line, words))
                .toList();
        return desk.page(
                request,
                "lot",
                "desk.stock.lot",
                Map.of(
                        "plant", search.hit(plant),
                        "lot", row(stock, lot.get()),
                        "holds", holds,
                        "history", history,
                        "entry", sent.orElse(Entry.blank(number)),
                        "may", request.who().may(Right.WALK),
                        "key",
                                sent.map(Entry::key)
                                        .orElseGet(() -> UUID.randomUUID().toString())),
                trouble);
    }

    /// @param key of its entry
    public record HoldRow(String key, String text, int quantity) {}

    private static HoldRow holdRow(Hold hold, StockWords words) {
        return new HoldRow(hold.key(), words.hold(hold), hold.quantity());
    }

    public record HistoryRow(String when, String what, String change, String count, String who, String why) {}

    private HistoryRow historyRow(LedgerLine line, StockWords words) {
        return new HistoryRow(
                desk.wording().time(LocalDateTime.ofInstant(line.happenedAt(), benchleaf.zone())),
                words.what(line),
                line.change() == 0 ? "" : String.format("%+d", line.change()),
                desk.wording().count(line.count()),
                line.who(),
                line.why());
    }

    /// The form of an entry as it was sent.
    public record Entry(String lot, String kind, String number, String why, String until, String hold, String key) {
        static Entry blank(String lot) {
            return new Entry(lot, "counted", "", "", "", "", "");
        }

        static Entry of(Request request) {
            return new Entry(
                    Desk.field(request, "lot"),
                    Desk.field(request, "kind"),
                    Desk.field(request, "number"),
                    Desk.field(request, "why"),
                    Desk.field(request, "until"),
                    Desk.field(request, "hold"),
                    Desk.field(request, "key"));
        }
    }

    private Reply enter(Request request) {
        Entry sent = Entry.of(request);
        return Desk.attempt(
                () -> {
                    LedgerEntry entry = LedgerEntry.of(
                            sent.lot(), event(sent), request.who().name(), sent.why(), sent.key());
                    switch (benchleaf.ledger().record(entry)) {
                        case LedgerResult.Applied done -> benchleaf.afterChange();
                        case LedgerResult.AlreadyApplied again -> {}
                        case LedgerResult.Refused(Problem problem) -> throw new Refusal(problem);
                    }
                    return Reply.seeOther(path(sent.lot()) + "&done=entered");
                },
                desk.wording(),
                trouble -> lot(request, sent.lot(), Optional.of(sent), trouble).withStatus(422));
    }

    private StockEvent event(Entry sent) {
        if (sent.key().isEmpty() || sent.key().length() > 80) {
            throw Desk.refusal("desk.form", "key");
        }
        int number = number(sent.number());
        return switch (sent.kind()) {
            case "counted" -> new StockEvent.Counted(number);
            case "received" -> new StockEvent.Received(number);
            case "shipped" -> new StockEvent.Shipped(number, Desk.present(sent.hold()));
            case "lost" -> new StockEvent.Lost(number);
            case "held" -> new StockEvent.Held(number, until(sent.until()));
            case "released" -> new StockEvent.Released(number, sent.hold());
            default -> throw Desk.refusal("desk.form", "kind");
        };
    }

    private static int number(String text) {
        try {
            int number = Integer.parseInt(text.replace(",", ""));
            if (number >= 0 && number <= MOST) {
                return number;
            }
        } catch (NumberFormatException typed) {
            // told below
        }
        throw Desk.refusal("desk.number", text);
    }

    /// A hold ends with the day that the form names.
    private Optional<Instant> until(String day) {
        if (day.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(java.time.LocalDate.parse(day)
                    .plusDays(1)
                    .atStartOfDay(benchleaf.zone())
                    .toInstant());
        } catch (java.time.DateTimeException typed) {
            throw Desk.refusal("desk.day", day);
        }
    }
}
