package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.PrinterShelf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.content.Wording;

/// Whether everything is as it should be: catalog, index, disk, and what was done last.
final class HealthPage {
    private static final Access OWN = new Access.SignedIn(Right.OWN);
    private static final long MEGA = 1024 * 1024L;
    /// Under this a copy and an index made anew may not find room; ours, no source.
    private static final long LITTLE = 1024 * MEGA;

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final Wording words;

    HealthPage(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.words = desk.wording();
    }

    List<Route> routes() {
        return List.of(Route.get("/desk/health", OWN, Keeping.NEVER, Headers.PAGE, this::page));
    }

    /// One thing that is looked at.
    ///
    /// @param amiss whether somebody should see to it
    public record Line(String name, String state, boolean amiss) {}

    private Reply page(Request request) {
        return desk.page(request, "health", "desk.health", Map.of("lines", lines()));
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        CatalogRevision revision = benchleaf.catalog().revision();
        CatalogRevision indexed = benchleaf.index().revision();
        boolean behind = indexed.compareTo(revision) < 0;
        line(
                lines,
                "catalog",
                words.text(
                        "desk.health.revision",
                        Map.of(
                                "revision", Long.toString(revision.number()),
                                "when",
                                        benchleaf
                                                .catalog()
                                                .changedAt()
                                                .map(this::time)
                                                .orElse(words.text("desk.home.never")))));
        lines.add(new Line(
                words.text("desk.health.index"),
                words.text(
                        behind ? "desk.health.index.behind" : "desk.health.index.level",
                        Map.of("revision", Long.toString(indexed.number()))),
                behind));
        line(
                lines,
                "database",
                benchleaf
                        .settings()
                        .database()
                        .map(server -> words.text("desk.health.server"))
                        .orElseGet(() -> words.text(
                                "desk.health.file",
                                Map.of(
                                        "size",
                                        words.count(size(benchleaf.workspace().database()))))));
        lines.add(disk());
        line(
                lines,
                "import",
                benchleaf
                        .newestImport()
                        .map(newest -> newest.file() + ", " + time(newest.appliedAt()))
                        .orElse(words.text("desk.home.never")));
        line(
                lines,
                "walk",
                benchleaf.walks().walks(1).stream()
                        .findFirst()
                        .map(walk -> walk.who() + ", " + time(walk.startedAt()))
                        .orElse(words.text("desk.home.never")));
        line(
                lines,
                "print",
                benchleaf.prints().last(1).stream()
                        .findFirst()
                        .map(printed -> printed.entry().name() + ", " + time(printed.at()))
                        .orElse(words.text("desk.home.never")));
        List<String> copies = BackupPages.names(benchleaf);
        boolean onServer = benchleaf.settings().database().isPresent();
        lines.add(new Line(
                words.text("desk.health.backup"),
                copies.isEmpty() ? words.text("desk.home.never") : copies.getFirst(),
                copies.isEmpty() && !onServer));
        List<String> printers = new PrinterShelf(benchleaf.workspace()).names();
        line(
                lines,
                "printers",
                printers.isEmpty() ? words.text("desk.shop.printers.none") : String.join(", ", printers));
        return lines;
    }

    private void line(List<Line> lines, String what, String state) {
        lines.add(new Line(words.text("desk.health." + what), state, false));
    }

    private Line disk() {
        try {
            FileStore disk = Files.getFileStore(benchleaf.workspace().folder());
            long free = disk.getUsableSpace();
            return new Line(
                    words.text("desk.health.disk"),
                    words.text("desk.health.free", Map.of("size", words.count(free / MEGA))),
                    free < LITTLE);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /// Megabytes of a database with what it has not yet put in its place.
    private static long size(Path database) {
        return Stream.of("", "-wal")
                        .map(end -> Path.of(database + end))
                        .filter(Files::exists)
                        .mapToLong(file -> file.toFile().length())
                        .sum()
                / MEGA;
    }

    private String time(Instant moment) {
        return words.time(LocalDateTime.ofInstant(moment, benchleaf.zone()));
    }
}
