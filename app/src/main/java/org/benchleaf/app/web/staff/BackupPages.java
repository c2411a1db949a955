package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.Backups;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;

/// Copies of the workspace: made and proved by a press, and taken away to another disk. Bringing one back is done with
/// a command, for it stops the shop.
final class BackupPages {
    private static final Access OWN = new Access.SignedIn(Right.OWN);
    /// The names that copies are given, and nothing that is a path.
    private static final Pattern NAME = Pattern.compile("benchleaf-\\d{8}-\\d{6}");

    private final Desk desk;
    private final Benchleaf benchleaf;

    BackupPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/backup", OWN, Keeping.NEVER, Headers.PAGE, request -> page(request, "")),
                Route.post("/desk/backup", OWN, Headers.PAGE, this::make),
                Route.get("/desk/backup/{name}", OWN, Keeping.NEVER, Headers.FILE, this::download));
    }

    /// Where copies lie: beside the workspace, for one within it would be copied with it.
    static Path folder(Benchleaf benchleaf) {
        Path shop = benchleaf.workspace().folder();
        return shop.resolveSibling(shop.getFileName() + "-backups");
    }

    /// Names of the copies, the newest first.
    static List<String> names(Benchleaf benchleaf) {
        Path folder = folder(benchleaf);
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> copies = Files.list(folder)) {
            return copies.map(copy -> String.valueOf(copy.getFileName()))
                    .filter(name -> NAME.matcher(name).matches())
                    .sorted(Comparator.reverseOrder())
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private Reply page(Request request, String trouble) {
        return desk.page(
                request,
                "backup",
                "desk.backup",
                Map.of(
                        "copies", names(benchleaf),
                        "folder", folder(benchleaf).toString(),
                        "server", benchleaf.settings().database().isPresent()),
                trouble);
    }

    private Reply make(Request request) {
        return Desk.attempt(
                () -> {
                    Backups.Copy copy = benchleaf.backups().make(benchleaf.workspace(), folder(benchleaf));
                    benchleaf
                            .accounts()
                            .wrote(
                                    desk.actor(request),
                                    "backup.made",
                                    String.valueOf(copy.folder().getFileName()));
                    if (!copy.problems().isEmpty()) {
                        return page(
                                        request,
                                        desk.wording().problem(copy.problems().getFirst()))
                                .withStatus(422);
                    }
                    return Reply.seeOther("/desk/backup?done=backup-made");
                },
                desk.wording(),
                trouble -> page(request, trouble).withStatus(422));
    }

    private Reply download(Request request) {
        Optional<Path> copy = Optional.of(request.part("name"))
                .filter(name -> NAME.matcher(name).matches())
                .map(folder(benchleaf)::resolve)
                .filter(Files::isDirectory);
        if (copy.isEmpty()) {
            return Reply.missing();
        }
        benchleaf.accounts().wrote(desk.actor(request), "backup.taken", request.part("name"));
        return Reply.stream("application/zip", out -> zip(copy.get(), out)).download(request.part("name") + ".zip");
    }

    private static void zip(Path folder, OutputStream out) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(out);
                Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                zip.putNextEntry(new ZipEntry(folder.getFileName() + "/"
                        + folder.relativize(file).toString().replace('\\', '/')));
                Files.copy(file, zip);
                zip.closeEntry();
            }
        }
    }
}
