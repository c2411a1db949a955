package org.benchleaf.app.service;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.Settings;
import org.benchleaf.app.Workspace;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogLocation;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.shared.Problem;

/// Copies workspaces, and opens each copy to prove it. A copy is a workspace like any other: it can be looked into with
/// every command. It stands under its name when it is whole, never before.
public final class Backups {
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("'benchleaf-'yyyyMMdd-HHmmss", Locale.ROOT);

    private final Clock clock;

    public Backups(Clock clock) {
        this.clock = clock;
    }

    /// A copy that was opened and looked through.
    ///
    /// @param folder where it is
    /// @param revision the state of its catalog
    /// @param plants plants in it
    /// @param lots lots in it
    /// @param files other files: settings, photographs, maps, content
    /// @param problems what was found amiss in it; the copy stands all the same
    public record Copy(Path folder, CatalogRevision revision, int plants, int lots, int files, List<Problem> problems) {
        public Copy {
            problems = List.copyOf(problems);
        }
    }

    /// Copies a workspace into a new folder below that one, named by the moment, while work goes on.
    ///
    /// @throws Refusal when it cannot be written
    /// @throws org.benchleaf.catalog.CatalogUnusable `backup.server` when the catalog lies on a server
    public Copy make(Workspace from, Path into) {
        return copy(from, into.resolve(LocalDateTime.now(clock).format(NAME)), "backup.exists", file -> {
            try (Catalog catalog = Catalog.open(from.catalog(Settings.read(from.settingsFile())), clock)) {
                catalog.copy(file);
            }
        });
    }

    /// Makes a workspace of a copy.
    ///
    /// @param to must not exist, or be empty
    /// @throws Refusal when there is something, or it cannot be written
    public Copy restore(Workspace from, Path to) {
        // by the file, not by opening it: a newer program would bring the backup itself up to date
        return copy(from, to, "restore.exists", file -> {
            Files.copy(from.database(), file);
            Path log = Path.of(from.database() + "-wal");
            if (Files.exists(log)) {
                Files.copy(log, Path.of(file + "-wal"));
            }
        });
    }

    /// Writes a catalog's file.
    private interface Source {
        void copyTo(Path file) throws IOException;
    }

    private Copy copy(Workspace from, Path to, String exists, Source catalog) {
        Path target = to.toAbsolutePath().normalize();
        if (target.startsWith(from.folder()) && !target.equals(from.folder())) {
            throw new Refusal(Problem.of("backup.inside", to.toString()));
        }
        try {
            if (Files.exists(target) && !isEmpty(target)) {
                throw new Refusal(Problem.of(exists, to.toString()));
            }
            Path parent = target.getParent() == null ? target : target.getParent();
            Files.createDirectories(parent);
            // the catalog knows who may sign in: nobody else on the machine reads it
            Path partly = Files.createTempDirectory(parent, ".benchleaf-");
            try {
                catalog.copyTo(new Workspace(partly).database());
                int files = copyFiles(from.folder(), partly);
                Copy proved = prove(partly, target, files);
                Files.deleteIfExists(target);
                Files.move(partly, target);
                return proved;
            } finally {
                delete(partly);
            }
        } catch (IOException unwritable) {
            throw new Refusal(Problem.of("backup.unwritable", to.toString()).with("why", unwritable.toString()));
        }
    }

    /// Opens the copied catalog as a program would and looks through everything.
    private Copy prove(Path partly, Path target, int files) {
        try (Catalog copied = Catalog.open(new CatalogLocation.InFile(new Workspace(partly).database()), clock)) {
            AtomicInteger plants = new AtomicInteger();
            AtomicInteger lots = new AtomicInteger();
            CatalogRevision revision = copied.view().forEachPlant(plant -> plants.incrementAndGet());
            copied.view().forEachStock(stock -> lots.addAndGet(stock.lots().size()));
            return new Copy(target, revision, plants.get(), lots.get(), files, copied.check());
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (var files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }

    /// Everything but the catalog's own files, the index, which is made anew, and what was printed.
    private static boolean belongs(String name) {
        return !name.startsWith("benchleaf.db") && !name.startsWith("index") && !name.equals("print");
    }

    private static int copyFiles(Path from, Path to) throws IOException {
        AtomicInteger count = new AtomicInteger();
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) throws IOException {
                Path relative = from.relativize(folder);
                if (!folder.equals(from) && !belongs(relative.getName(0).toString())) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                Files.createDirectories(to.resolve(relative));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Path relative = from.relativize(file);
                if (attributes.isRegularFile() && belongs(relative.getName(0).toString())) {
                    Files.copy(file, to.resolve(relative));
                    count.incrementAndGet();
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return count.get();
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
