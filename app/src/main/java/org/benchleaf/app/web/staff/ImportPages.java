package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.DiffReport;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.app.service.LoadProgress;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.app.web.route.Upload;
import org.benchleaf.catalog.ImportDiff;
import org.benchleaf.catalog.NewestImport;
import org.benchleaf.catalog.UndoneImport;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.SheetException;

/// Spreadsheets: sent in, shown as what they would change, applied as a whole or not at all, and taken
/// back.
final class ImportPages {
    private static final Access EDIT = new Access.SignedIn(Right.EDIT);
    /// A list of 100,000 lots has some 8 MB.
    static final long LARGEST = 24L * 1024 * 1024;

    private static final int SHOWN = 500;

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final PendingImports pending = new PendingImports();
    private final ImportColumns columns;

    ImportPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.columns = new ImportColumns(desk, this::shown);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/import", EDIT, Keeping.NEVER, Headers.PAGE, request -> form(request, "")),
                Route.post("/desk/import", EDIT, Headers.PAGE, this::preview).upTo(LARGEST),
                Route.post("/desk/import/apply", EDIT, Headers.PAGE, this::apply),
                Route.post("/desk/import/columns", EDIT, Headers.PAGE, request -> columns.told(request, this::form))
                        .upTo(1024 * 1024L),
                Route.post("/desk/import/undo", EDIT, Headers.PAGE, this::undo));
    }

    Reply form(Request request, String trouble) {
        Optional<NewestImport> newest = benchleaf.newestImport();
        return desk.page(
                request,
                "import",
                "desk.way.import",
                Map.of(
                        "maps",
                        benchleaf.imports().maps().names(),
                        "newest",
                        newest.map(this::told).orElse(""),
                        "id",
                        newest.map(one -> Long.toString(one.id())).orElse("")),
                trouble);
    }

    private String told(NewestImport newest) {
        return desk.wording()
                .text(
                        "desk.import.newest",
                        Map.of(
                                "file",
                                newest.file(),
                                "when",
                                desk.wording().time(LocalDateTime.ofInstant(newest.appliedAt(), benchleaf.zone()))));
    }

    private Reply preview(Request request) {
        try {
            return Desk.attempt(
                    () -> previewed(request),
                    desk.wording(),
                    trouble -> form(request, trouble).withStatus(422));
        } catch (SheetException unreadable) {
            return form(request, desk.wording().problem(unreadable.problem())).withStatus(422);
        }
    }

    private Reply previewed(Request request) {
        Upload upload = request.upload("file").orElseThrow(() -> Desk.refusal("desk.import.file", ""));
        if (request.form("columns").isPresent()) {
            return columns.begin(request, upload);
        }
        Optional<String> map = Desk.present(Desk.field(request, "map"));
        ImportService imports = benchleaf.imports();
        if (map.isPresent() && !imports.maps().names().contains(map.get())) {
            throw Desk.refusal("desk.form", "map"); // a name and never a path
        }
        String name = safeName(upload.name());
        try {
            Path folder = Files.createDirectories(benchleaf.workspace().folder().resolve("incoming"));
            // each in a folder of its own: findings name the file as its sender does
            Path own = Files.createTempDirectory(folder, "sent-");
            Path file = own.resolve(name);
            try (InputStream content = upload.content()) {
                Files.copy(content, file);
                ImportPlan plan = imports.plan(file, map, Optional.empty(), LoadProgress.UNHEARD);
                return shown(request, plan);
            } finally {
                Files.deleteIfExists(file);
                Files.deleteIfExists(own);
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /// What a plan would change, with the question whether it should.
    Reply shown(Request request, ImportPlan plan) {
        ImportDiff diff = benchleaf.imports().rehearse(plan, SHOWN, LoadProgress.UNHEARD);
        return desk.page(
                request,
                "import-preview",
                "desk.import.preview",
                Map.of(
                        "report", new DiffReport(desk.wording()).page(plan, diff, SHOWN),
                        "id", pending.keep(request.who().name(), plan),
                        "blocked", isBlocked(plan),
                        "file", plan.file()));
    }

    /// Whether some row is not in the plan: then a person must say that the others are wanted without it.
    private static boolean isBlocked(ImportPlan plan) {
        return plan.rowsLeftOut() > 0;
    }

    /// Nothing of a path, and nothing a file system could take amiss.
    static String safeName(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        String plain = last.replaceAll("[^\\p{L}\\p{N}. _-]", "_").strip();
        String cut = plain.length() > 100 ? plain.substring(plain.length() - 100) : plain;
        boolean sheet = cut.toLowerCase(Locale.ROOT).matches(".+\\.(csv|xlsx|txt|tsv)");
        if (!sheet || cut.startsWith(".")) {
            throw Desk.refusal("desk.import.kind", last);
        }
        return cut;
    }

    private Reply apply(Request request) {
        return Desk.attempt(
                () -> {
                    ImportPlan plan = pending.take(
                                    Desk.field(request, "id"), request.who().name())
                            .orElseThrow(() -> Desk.refusal("desk.import.gone", ""));
                    if (isBlocked(plan) && Desk.field(request, "leave-out").isEmpty()) {
                        throw Desk.refusal("desk.import.blocked", plan.file());
                    }
                    benchleaf.imports().apply(plan);
                    benchleaf.afterChange();
                    benchleaf.accounts().wrote(desk.actor(request), "import.applied", plan.file());
                    return Reply.seeOther("/desk/import?done=imported");
                },
                desk.wording(),
                trouble -> form(request, trouble).withStatus(422));
    }

    private Reply undo(Request request) {
        return Desk.attempt(
                () -> {
                    UndoneImport undone = benchleaf.imports().undo(number(Desk.field(request, "import")));
                    benchleaf.afterChange();
                    benchleaf.accounts().wrote(desk.actor(request), "import.undone", undone.file());
                    return Reply.seeOther("/desk/import?done=undone");
                },
                desk.wording(),
                trouble -> form(request, trouble).withStatus(422));
    }

    private static long number(String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException none) {
            throw Desk.refusal("desk.form", "import");
        }
    }
}
