package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.RulesWords;
import org.benchleaf.app.service.SaleRuleService;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.app.web.route.Upload;
import org.benchleaf.catalog.intake.SheetException;
import org.benchleaf.catalog.rules.RuleList;
import org.benchleaf.catalog.rules.SaleRule;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Ruling;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.Shipment;

/// What the lists of sale rules say: of a plant on its way somewhere, and all that is loaded. A list takes the place of
/// the earlier one of its name; that is how a rule is added or ended.
final class RulesPages {
    private static final Access LOOK = new Access.SignedIn(Right.LOOK);
    private static final Access EDIT = new Access.SignedIn(Right.EDIT);
    private static final long LARGEST = 2L * 1024 * 1024;

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final Wording wording;

    RulesPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.wording = desk.wording();
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/rules", LOOK, Keeping.NEVER, Headers.PAGE, this::open),
                Route.post("/desk/rules", EDIT, Headers.PAGE, this::load).upTo(LARGEST));
    }

    /// What was asked, as it was typed.
    public record Asked(String plant, String to, String on) {}

    /// A rule that bears on what was asked.
    public record Line(String text, String source) {}

    /// A rule of the lists.
    public record RuleRow(String taxon, String area, String standing, String from, String notice, String source) {}

    private Reply open(Request request) {
        Asked asked = new Asked(
                request.query("plant").orElse("").strip(),
                request.query("to").orElse("").strip(),
                request.query("on").orElse("").strip());
        return Desk.attempt(
                () -> page(request, asked, answer(asked), ""),
                wording,
                trouble -> page(request, asked, Map.of(), trouble).withStatus(422));
    }

    private Reply page(Request request, Asked asked, Map<String, ?> answer, String trouble) {
        List<SaleRule> rules = benchleaf.catalog().saleRules().rules();
        Map<String, Object> model = new HashMap<>(Map.of(
                "asked", asked,
                "verdict", "",
                "said", "",
                "lines", List.of(),
                "broken", List.of(),
                "rules", rows(rules),
                "caution",
                        rules.stream()
                                .map(SaleRule::compiledOn)
                                .max(Comparator.naturalOrder())
                                .map(wording::saleCaution)
                                .orElse(""),
                "may", request.who().may(Right.EDIT)));
        model.putAll(answer);
        return desk.page(request, "rules", "desk.rules", model, trouble);
    }

    private Map<String, ?> answer(Asked asked) {
        if (asked.plant().isEmpty()) {
            return Map.of();
        }
        LocalDate day = asked.on().isEmpty() ? benchleaf.today() : day(asked.on());
        SaleRuleService.Said said = benchleaf.saleRules().ask(asked.plant(), Optional.empty(), benchleaf.plantFinder());
        String name = said.name() + (said.sure() ? "" : ". " + wording.text("rules.by-common-name"));
        if (asked.to().isEmpty()) {
            Shipment anywhere = Shipment.to(Destination.of(Region.all().getFirst()), day);
            List<Ruling> rulings = RulesWords.rulings(said, day);
            return Map.of(
                    "said",
                    name,
                    "verdict",
                    rulings.isEmpty()
                            ? wording.text(
                                    "rules.none-for",
                                    Map.of("plant", said.name().toString()))
                            : wording.text("desk.rules.anywhere"),
                    "lines",
                    lines(rulings, anywhere));
        }
        Destination place = ListForm.ok(Destination.read(asked.to()));
        SaleVerdict verdict =
                said.rules().at(new Shipment(place, day, benchleaf.settings().place()));
        return Map.of(
                "said", name,
                "verdict", wording.sentence(wording.verdict(verdict)),
                "lines", lines(verdict.rulings(), verdict.shipment()));
    }

    private List<Line> lines(List<Ruling> rulings, Shipment shipment) {
        return rulings.stream()
                .map(ruling -> new Line(
                        wording.ruling(ruling, shipment),
                        wording.text(
                                "rules.sources",
                                Map.of("source", ruling.match().source().text()))))
                .toList();
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException typed) {
            throw Desk.refusal("desk.day", text);
        }
    }

    private List<RuleRow> rows(List<SaleRule> rules) {
        LocalDate today = benchleaf.today();
        return rules.stream()
                .filter(rule ->
                        rule.dates().until().map(last -> !last.isBefore(today)).orElse(true))
                .sorted(Comparator.comparing(SaleRule::taxon).thenComparing(rule -> wording.area(rule.area())))
                .map(rule -> new RuleRow(
                        rule.taxon(),
                        wording.area(rule.area()),
                        wording.text("standing." + rule.standing().name()),
                        rule.dates().saleFrom().map(wording::date).orElse(""),
                        rule.notice(),
                        rule.source().text()))
                .toList();
    }

    private Reply load(Request request) {
        Asked nothing = new Asked("", "", "");
        try {
            return Desk.attempt(
                    () -> {
                        Upload upload = request.upload("file").orElseThrow(() -> Desk.refusal("desk.import.file", ""));
                        RuleList list = read(upload);
                        if (list.isBroken()) {
                            return page(
                                            request,
                                            nothing,
                                            Map.of("broken", broken(list)),
                                            broken(list).getFirst())
                                    .withStatus(422);
                        }
                        benchleaf.saleRules().load(list);
                        benchleaf.afterChange();
                        benchleaf.accounts().wrote(desk.actor(request), "rules.loaded", list.name());
                        return Reply.seeOther("/desk/rules?done=rules-loaded");
                    },
                    wording,
                    trouble -> page(request, nothing, Map.of(), trouble).withStatus(422));
        } catch (SheetException unreadable) {
            return page(request, nothing, Map.of(), wording.problem(unreadable.problem()))
                    .withStatus(422);
        }
    }

    private static RuleList read(Upload upload) {
        try (InputStream content = upload.content()) {
            return SaleRuleService.read(ImportPages.safeName(upload.name()), content.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /// What was found in a list that is not loaded, the list's own refusal first.
    private List<String> broken(RuleList list) {
        List<String> all = new ArrayList<>();
        all.add(wording.problem(Problem.of("rules.broken", list.name())));
        list.findings().forEach(finding -> all.add(finding.place() + ": " + wording.problem(finding.problem())));
        return all;
    }
}
