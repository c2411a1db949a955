package org.benchleaf.app.web.staff;

import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.content.Wording;

/// Where the working day begins: what needs somebody.
final class HomePage {
    private final Desk desk;
    private final Benchleaf benchleaf;
    private final ToDo toDo;

    private final ChangedPages changed;
    private final Findings findings;

    /// @param changed what should be printed again
    HomePage(Desk desk, ChangedPages changed) {
        this.changed = changed;
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.toDo = new ToDo(benchleaf);
        this.findings = new Findings(benchleaf);
    }

    List<Route> routes() {
        return List.of(Route.get("/desk", new Access.SignedIn(Right.LOOK), Keeping.NEVER, Headers.PAGE, this::home));
    }

    public record Row(String text, String path, String note) {}

    private Reply home(Request request) {
        Wording words = desk.wording();
        ToDo.Found found = toDo.found();
        List<Row> oldest = found.oldest().stream()
                .map(one -> new Row(
                        name(one.lot().item().plant()),
                        StockPages.path(one.lot().lot()),
                        words.text(
                                "desk.home.lot",
                                Map.of(
                                        "lot", one.lot().lot(),
                                        "place", one.lot().place(),
                                        "day", one.day().map(words::date).orElse(words.text("desk.home.never"))))))
                .toList();
        List<Row> fewest = found.fewest().stream()
                .map(one -> new Row(
                        name(one.plant()),
                        "/desk/stock?q=" + one.plant(),
                        words.text(
                                "desk.home.left",
                                Map.of(
                                        "size",
                                        words.size(one.item().size(), one.item().form()),
                                        "count",
                                        words.count(one.free())))))
                .toList();
        String last = benchleaf
                .newestImport()
                .map(newest -> words.text(
                        "desk.import.newest",
                        Map.of(
                                "file",
                                newest.file(),
                                "when",
                                words.time(LocalDateTime.ofInstant(newest.appliedAt(), benchleaf.zone())))))
                .orElse("");
        Map<String, Object> model = new HashMap<>(asked(request));
        model.putAll(Map.of(
                "unseen",
                words.text("desk.home.unseen", Map.of("count", words.count(found.unseen()))),
                "oldest",
                oldest,
                "low",
                words.text("desk.home.low", Map.of("count", words.count(found.low()), "few", words.count(ToDo.FEW))),
                "fewest",
                fewest,
                "gone",
                words.text("desk.home.gone", Map.of("count", words.count(found.gone()))),
                "last",
                last,
                "may",
                request.who().may(Right.EDIT)));
        return desk.page(request, "home", "desk.way.home", model);
    }

    /// What only some may see to: unprinted changes, findings, conflicts of walks.
    private Map<String, Object> asked(Request request) {
        Wording words = desk.wording();
        boolean edits = request.who().may(Right.EDIT);
        Optional<Findings.Found> found = edits ? findings.now() : Optional.empty();
        int conflicts =
                request.who().may(Right.WALK) ? benchleaf.walks().conflicts().size() : 0;
        return Map.of(
                "changed",
                request.who().may(Right.PRINT) ? changed() : "",
                "sums",
                found.map(Findings.Found::sums).orElse(List.of()),
                "findings",
                found.map(Findings.Found::rows).orElse(List.of()),
                "looking",
                edits && found.isEmpty(),
                "conflicts",
                conflicts == 0 ? "" : words.text("desk.home.conflicts", Map.of("count", words.count(conflicts))));
    }

    private String changed() {
        Optional<Integer> count = changed.count();
        if (count.isEmpty()) {
            return desk.wording().text("desk.looking");
        }
        return count.get() == 0
                ? ""
                : desk.wording()
                        .text(
                                "desk.home.changed",
                                Map.of("count", desk.wording().count(count.get())));
    }

    private String name(org.benchleaf.shared.code.PlantKey key) {
        return benchleaf
                .catalog()
                .plant(key)
                .map(plant -> plant.name().toString())
                .orElse(key.toString());
    }
}
