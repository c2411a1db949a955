package org.benchleaf.app.web.staff;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.NewestImport;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.Finding;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.LengthRange;

/// Plants and their facts, each with its source. A change of a fact is an import of one cell: checked
/// in the same way, refused in the same words, and taken back in the same way.
final class PlantDesk {
    private static final Access LOOK = new Access.SignedIn(Right.LOOK);
    private static final Access EDIT = new Access.SignedIn(Right.EDIT);

    /// Under this name an edit stands among the imports.
    static final String EDITED = "desk ";

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final PlantSearch search;
    private final PlantHistory history;

    PlantDesk(Desk desk, PlantSearch search) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.search = search;
        this.history = new PlantHistory(benchleaf);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/plants", LOOK, Keeping.NEVER, Headers.PAGE, this::list),
                Route.get("/desk/plants/{key}", LOOK, Keeping.NEVER, Headers.PAGE, this::plant),
                Route.post("/desk/plants/{key}", EDIT, Headers.PAGE, this::change),
                Route.post("/desk/plants/{key}/undo", EDIT, Headers.PAGE, this::undo));
    }

    private Reply list(Request request) {
        String words = request.query("q").orElse("").strip();
        List<PlantSearch.Hit> found = search.find(words);
        return desk.page(request, "plants", "desk.way.plants", Map.of("q", words, "found", found));
    }

    private Optional<PlantRecord> asked(Request request) {
        return PlantKey.read(request.part("key")).toOptional().flatMap(benchleaf.catalog()::plant);
    }

    private Reply plant(Request request) {
        return asked(request)
                .map(plant -> page(request, plant, Sent.NOTHING, ""))
                .orElseGet(Reply::missing);
    }

    /// What the form of a fact sent.
    ///
    /// @param before the value that the person saw
    private record Sent(String attribute, String before, String value, String source) {
        static final Sent NOTHING = new Sent("", "", "", "");
    }

    /// One attribute on the page.
    ///
    /// @param id of the attribute
    /// @param label as people say it
    /// @param stored as the catalog writes it; empty when it is not known
    /// @param value as people read it
    /// @param shown in the field: what was sent and refused, or the value
    /// @param origin who states it, and whether the species does
    /// @param others what other sources state
    /// @param open whether its form stands open
    public record FactRow(
            String id,
            String label,
            String stored,
            String value,
            String shown,
            String source,
            String origin,
            List<Other> others,
            boolean open) {}

    /// What another source states.
    ///
    /// @param typed as the form of a fact takes it
    /// @param chosen the source it has once it is chosen
    public record Other(String value, String source, String typed, String chosen) {}

    private Reply page(Request request, PlantRecord plant, Sent sent, String trouble) {
        List<FactRow> known = new ArrayList<>();
        List<FactRow> unknown = new ArrayList<>();
        for (Attribute<?> attribute : Attributes.all()) {
            if (!attribute.equals(Attributes.SALE_RULES)) {
                FactRow row = row(plant, attribute, sent);
                (row.value().isEmpty() ? unknown : known).add(row);
            }
        }
        Optional<NewestImport> mine =
                benchleaf.newestImport().filter(newest -> newest.file().startsWith(fileOf(plant)));
        return desk.page(
                request,
                "plant",
                "desk.plant",
                Map.of(
                        "plant",
                        search.hit(plant),
                        "synonyms",
                        String.join(
                                "; ",
                                plant.synonyms().stream()
                                        .map(Synonym::text)
                                        .distinct()
                                        .toList()),
                        "known",
                        known,
                        "unknown",
                        unknown,
                        "source",
                        sent.source().isEmpty() ? benchleaf.settings().shopName() : sent.source(),
                        "may",
                        request.who().may(Right.EDIT),
                        "history",
                        history.of(plant.key()),
                        "undo",
                        mine.map(newest -> Long.toString(newest.id())).orElse("")),
                trouble);
    }

    private FactRow row(PlantRecord plant, Attribute<?> attribute, Sent sent) {
        Optional<? extends Fact<?>> fact = plant.facts().fact(attribute);
        String value = fact.map(Fact::text).orElse("");
        boolean open = attribute.id().equals(sent.attribute());
        String source = fact.map(known -> known.source().text()).orElse("");
        String read = fact.map(this::words).orElse("");
        return new FactRow(
                attribute.id(),
                attribute.id().replace('_', ' '),
                value,
                read,
                open ? sent.value() : read.replace('–', '-'),
                source,
                fact.map(Fact::inherited).orElse(false)
                        ? desk.wording().text("plant.inherited", Map.of("source", source))
                        : source,
                plant.otherFacts().stream()
                        .filter(other -> other.attribute().equals(attribute))
                        .map(this::other)
                        .toList(),
                open);
    }

    private Other other(Fact<?> fact) {
        String source = fact.source().text();
        return new Other(
                words(fact),
                source,
                words(fact).replace('–', '-'),
                desk.wording()
                        .text(
                                "desk.fact.chosen",
                                Map.of(
                                        "source",
                                        source,
                                        "shop",
                                        benchleaf.settings().shopName())));
    }

    /// A length in the shop's unit; everything else as a spreadsheet holds it.
    private String words(Fact<?> fact) {
        if (fact.value() instanceof LengthRange range) {
            String length = desk.wording().length(range);
            return length.contains("(") ? fact.text() : length;
        }
        return fact.text();
    }

    private static String fileOf(PlantRecord plant) {
        return EDITED + plant.key();
    }

    private Reply change(Request request) {
        Optional<PlantRecord> asked = asked(request);
        if (asked.isEmpty()) {
            return Reply.missing();
        }
        Sent sent = new Sent(
                Desk.field(request, "attribute"),
                Desk.field(request, "before"),
                Desk.field(request, "value"),
                Desk.field(request, "source"));
        return Desk.attempt(
                () -> {
                    apply(request, asked.get(), sent);
                    return Reply.seeOther("/desk/plants/" + asked.get().key() + "?done=changed#" + sent.attribute());
                },
                desk.wording(),
                trouble -> page(request, asked.get(), sent, trouble).withStatus(422));
    }

    private void apply(Request request, PlantRecord plant, Sent sent) {
        Attribute<?> attribute = Attributes.all().stream()
                .filter(one -> one.id().equals(sent.attribute()) && !one.equals(Attributes.SALE_RULES))
                .findFirst()
                .orElseThrow(() -> Desk.refusal("desk.form", sent.attribute()));
        String now = plant.facts().fact(attribute).map(Fact::text).orElse("");
        if (!now.equals(sent.before())) {
            throw new Refusal(
                    Problem.of("desk.changed.meanwhile", sent.before()).with("now", now));
        }
        if (sent.value().isEmpty() || sent.source().isEmpty()) {
            throw Desk.refusal("desk.fact.empty", attribute.id());
        }
        String row = String.join(
                ",",
                cell(plant.key().toString()),
                cell(plant.name().toString()),
                cell(sent.value()),
                cell(sent.source()));
        String sheet = "key,name," + attribute.id() + ",source\n" + row + "\n";
        ImportService imports = benchleaf.imports();
        ImportPlan plan = imports.plan(
                fileOf(plant) + " " + attribute.id() + ".csv",
                sheet.getBytes(StandardCharsets.UTF_8),
                ColumnMaps.ownPlants());
        Optional<Finding> doubt = plan.findings().stream()
                .filter(finding -> finding.outcome() != Finding.Outcome.KEPT)
                .findFirst();
        if (doubt.isPresent()) {
            throw new Refusal(doubt.get().problem());
        }
        imports.apply(plan);
        benchleaf.afterChange();
        benchleaf
                .accounts()
                .wrote(
                        desk.actor(request),
                        "fact.changed",
                        PlantHistory.entry(
                                plant.key(),
                                attribute.id(),
                                plant.facts().fact(attribute).map(this::words).orElse(""),
                                sent.value(),
                                sent.source()));
    }

    private static String cell(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private Reply undo(Request request) {
        Optional<PlantRecord> asked = asked(request);
        if (asked.isEmpty()) {
            return Reply.missing();
        }
        return Desk.attempt(
                () -> {
                    long id;
                    try {
                        id = Long.parseLong(Desk.field(request, "import"));
                    } catch (NumberFormatException none) {
                        throw Desk.refusal("desk.form", "import");
                    }
                    String file = benchleaf.imports().undo(id).file();
                    benchleaf.afterChange();
                    benchleaf.accounts().wrote(desk.actor(request), "import.undone", file);
                    return Reply.seeOther("/desk/plants/" + asked.get().key() + "?done=undone");
                },
                desk.wording(),
                trouble -> page(request, asked.get(), Sent.NOTHING, trouble).withStatus(422));
    }
}
