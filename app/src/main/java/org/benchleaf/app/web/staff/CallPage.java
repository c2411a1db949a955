package org.benchleaf.app.web.staff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.ComparisonWords;
import org.benchleaf.app.service.OriginalFinder;
import org.benchleaf.app.service.OriginalWords;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.Kin;
import org.benchleaf.search.substitute.Purpose;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.search.substitute.SubstituteAnswer;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.stock.StockSize;

/// A customer is on the telephone and the plant is gone: what does the same work, in words to read aloud.
final class CallPage {
    private static final int EACH = 3;

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final PlantSearch search;

    CallPage(Desk desk, PlantSearch search) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.search = search;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/call", new Access.SignedIn(Right.LOOK), Keeping.NEVER, Headers.PAGE, this::call));
    }

    /// What was asked, as it stands in the form.
    public record Asked(String q, String size, String quantity, String purpose, String by) {
        static Asked of(Request request) {
            return new Asked(
                    text(request, "q"),
                    text(request, "size"),
                    text(request, "quantity"),
                    text(request, "for"),
                    text(request, "by"));
        }

        private static String text(Request request, String name) {
            String text = request.query(name).orElse("").strip();
            return text.substring(0, Math.min(120, text.length()));
        }
    }

    public record Group(String heading, List<Line> lines) {}

    /// One substitute, in sentences.
    public record Line(PlantSearch.Hit plant, String offer, List<String> said, List<String> mind) {}

    private Reply call(Request request) {
        Asked asked = Asked.of(request);
        if (asked.q().isEmpty()) {
            return page(request, asked, List.of(), List.of(), "");
        }
        try {
            return answer(request, asked);
        } catch (Refusal refusal) {
            return page(request, asked, List.of(), List.of(), desk.wording().problem(refusal.problem()))
                    .withStatus(422);
        }
    }

    private Reply answer(Request request, Asked asked) {
        Wording words = desk.wording();
        OriginalFinder.Found found = benchleaf.originals().find(asked.q());
        SubstituteQuery query = query(asked, found);
        SubstituteAnswer answer = benchleaf.substitutes().find(query);
        List<String> head = new ArrayList<>();
        OriginalWords originals = new OriginalWords(words);
        head.add(originals.insteadOf(found));
        originals.takenAs(found, asked.q()).ifPresent(head::add);
        head.add(originals.notGrown(found, answer).orElseGet(() -> stock(answer)));
        head.addAll(originals.work(found, answer.role()));
        originals.passedOver(answer).ifPresent(head::add);
        List<Group> groups = new ArrayList<>();
        for (Kin kin : Kin.values()) {
            List<Line> lines = answer.of(kin).stream().map(this::line).toList();
            if (!lines.isEmpty()) {
                groups.add(new Group(words.text("substitute.group." + kin), lines));
            }
        }
        answer.all().stream()
                .flatMap(one -> one.sale().stream())
                .findFirst()
                .ifPresent(sale -> head.add(words.saleCaution(sale.compiledOn())));
        return page(request, asked, head, groups, groups.isEmpty() ? words.text("desk.call.none") : "");
    }

    private String stock(SubstituteAnswer answer) {
        String stock = search.line(answer.originalStock());
        return stock.isEmpty()
                ? desk.wording().text("desk.stock.none")
                : desk.wording().text("substitute.stock", Map.of("stock", stock));
    }

    private Line line(Substitute one) {
        Wording words = desk.wording();
        ComparisonWords comparisons = new ComparisonWords(words);
        List<String> said = new ArrayList<>();
        said(said, "substitute.differs", comparisons.differs(one.comparison()));
        said(said, "substitute.agrees", comparisons.agrees(one.comparison()));
        said(said, "substitute.better", comparisons.better(one.comparison()));
        said(said, "substitute.named-by", comparisons.namedBy(one));
        said(said, "substitute.unknown", comparisons.unknown(one.comparison()));
        List<String> mind = new ArrayList<>();
        said(mind, "substitute.hazard", String.join("; ", comparisons.hazards(one)));
        mind.addAll(comparisons.troubles(one));
        comparisons.sale(one).ifPresent(sale -> said(mind, "substitute.sale", sale));
        if (comparisons.isHardinessUnknown(one)) {
            mind.add(words.text("substitute.hardiness-unknown"));
        }
        return new Line(search.hit(one.match().plant()), comparisons.offer(one), said, mind);
    }

    private void said(List<String> lines, String word, String text) {
        if (!text.isEmpty()) {
            lines.add(desk.wording().text(word, Map.of("text", text)));
        }
    }

    private SubstituteQuery query(Asked asked, OriginalFinder.Found found) {
        LocalDate today = benchleaf.today();
        Demand demand = new Demand(count(asked.quantity()), size(asked.size()), week(asked.by()), true);
        LocalDate shipped = demand.by().map(YearWeek::monday).orElse(today);
        Optional<Shipment> home =
                benchleaf.settings().place().map(place -> new Shipment(place, shipped, Optional.of(place)));
        List<WeighedWish> others = found.wholeGenus()
                ? List.of(
                        WeighedWish.of(new Wish.NotOfGenus(found.plant().name().genus())))
                : List.of();
        return new SubstituteQuery(
                found.plant(), purpose(asked.purpose()), demand, home, others, YearWeek.of(today), EACH);
    }

    private static int count(String text) {
        if (text.isEmpty()) {
            return 1;
        }
        try {
            int count = Integer.parseInt(text);
            if (count >= 1 && count <= 1_000_000) {
                return count;
            }
        } catch (NumberFormatException typed) {
            // told below
        }
        throw Desk.refusal("desk.number", text);
    }

    private static Optional<StockSize> size(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(known(StockSize.read(text)));
    }

    private static Optional<YearWeek> week(String day) {
        if (day.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(YearWeek.of(LocalDate.parse(day)));
        } catch (java.time.DateTimeException typed) {
            throw Desk.refusal("desk.day", day);
        }
    }

    private static Purpose purpose(String text) {
        if (text.isEmpty()) {
            return Purpose.NOT_SAID;
        }
        return Term.read(Use.class, text)
                .toOptional()
                .map(Purpose::of)
                .orElseGet(() -> Purpose.of(known(Term.read(Season.class, text))));
    }

    private static <T> T known(Reading<T> reading) {
        return switch (reading) {
            case Reading.Read<T>(T value) -> value;
            case Reading.Refused<T>(Problem problem) -> throw new Refusal(problem);
        };
    }

    /// Uses and seasons to choose from.
    public record Choice(String value, String label) {}

    private Reply page(Request request, Asked asked, List<String> head, List<Group> groups, String trouble) {
        List<Choice> purposes =
                new ArrayList<>(List.of(new Choice("", desk.wording().text("desk.call.any"))));
        for (Season season : Season.values()) {
            purposes.add(new Choice(season.term(), desk.wording().term(season)));
        }
        for (Use use : Use.values()) {
            purposes.add(new Choice(use.term(), desk.wording().term(use)));
        }
        return desk.page(
                request,
                "call",
                "desk.way.call",
                Map.of("asked", asked, "head", head, "groups", groups, "purposes", purposes),
                trouble);
    }
}
