package org.benchleaf.app.web.staff;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.Reprints;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.prints.PrintedEntry;
import org.benchleaf.content.Wording;
import org.benchleaf.render.CardFormat;

/// What changed since it was printed, to be printed again; and what was printed last, by whom.
final class ChangedPages {
    private static final Access PRINT = new Access.SignedIn(Right.PRINT);
    private static final int LAST = 40;

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final Wording words;
    private final Meanwhile<List<Reprints.Changed>> changed;

    ChangedPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.words = desk.wording();
        this.changed = new Meanwhile<>(this::ground, () -> benchleaf.reprints().cards());
    }

    List<Route> routes() {
        return List.of(Route.get("/desk/print/changed", PRINT, Keeping.NEVER, Headers.PAGE, this::page));
    }

    /// The state of the catalog, the newest print and the day.
    private record Ground(CatalogRevision revision, long print, java.time.LocalDate day) {}

    private Object ground() {
        return new Ground(
                benchleaf.catalog().revision(),
                benchleaf.prints().last(1).stream()
                        .findFirst()
                        .map(PrintedEntry::number)
                        .orElse(0L),
                benchleaf.today());
    }

    /// How many; empty while they are being looked for.
    Optional<Integer> count() {
        return changed.now().map(List::size);
    }

    /// Cards of one size that can be printed again together.
    ///
    /// @param card its field at the print desk
    public record Group(
            String title, String doc, String field, String card, boolean wide, boolean priced, List<Row> rows) {}

    /// @param line its line at the print desk
    public record Row(String name, String path, String line, int copies, String what, String printed) {}

    private Reply page(Request request) {
        Optional<List<Reprints.Changed>> found = changed.now();
        Map<String, List<Reprints.Changed>> byFormat = new LinkedHashMap<>();
        found.orElse(List.of())
                .forEach(one -> byFormat.computeIfAbsent(one.format() + " " + one.priced(), fresh -> new ArrayList<>())
                        .add(one));
        return desk.page(
                request,
                "changed",
                "desk.print.changed",
                Map.of(
                        "looking",
                        found.isEmpty(),
                        "groups",
                        byFormat.values().stream().map(this::group).toList(),
                        "last",
                        benchleaf.prints().last(LAST).stream()
                                .map(this::printed)
                                .toList()));
    }

    private Group group(List<Reprints.Changed> cards) {
        CardFormat format = cards.getFirst().format();
        String name = format.name().toLowerCase(Locale.ROOT);
        String upright = name.replace("_wide", "");
        boolean sign = upright.equals("sign") || upright.equals("a3");
        boolean priced = cards.getFirst().priced();
        String title = words.text("desk.print.doc." + (sign ? "sign" : "card")) + ", "
                + words.text((sign ? "desk.print.sign." : "desk.print.card.") + upright)
                + (format.isWide() ? ", " + words.text("desk.print.wide") : "")
                + (priced ? "" : ", " + words.text("desk.print.no-price"));
        return new Group(
                title,
                sign ? "sign" : "card",
                sign ? "sign" : "card",
                upright,
                format.isWide(),
                priced,
                cards.stream().limit(PrintForm.MOST_LINES).map(this::row).toList());
    }

    private Row row(Reprints.Changed one) {
        String what;
        if (one.otherPrice()) {
            what = words.text(
                    "desk.print.changed.price",
                    Map.of(
                            "old", one.printed().entry().price().orElse("-"),
                            "new", one.now().price().orElse("-")));
        } else if (one.otherAddress()) {
            what = words.text("desk.print.changed.address");
        } else {
            what = words.text("desk.print.changed.words");
        }
        return new Row(
                one.now().name(),
                "/desk/plants/" + one.now().plant(),
                one.now().plant() + "|" + one.size().map(Object::toString).orElse(""),
                one.now().copies(),
                what,
                when(one.printed()));
    }

    /// One entry of the print ledger.
    public record Printed(String when, String who, String name, String what) {}

    private Printed printed(PrintedEntry entry) {
        return new Printed(
                when(entry),
                entry.who(),
                entry.entry().name(),
                words.count(entry.entry().copies()) + " × " + entry.entry().document() + ", "
                        + entry.entry().format()
                        + entry.entry().price().map(price -> ", " + price).orElse(""));
    }

    private String when(PrintedEntry entry) {
        return words.time(LocalDateTime.ofInstant(entry.at(), benchleaf.zone()));
    }
}
