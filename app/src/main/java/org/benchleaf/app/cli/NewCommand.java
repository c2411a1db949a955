package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.Settings;
import org.benchleaf.app.Workspace;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogUnusable;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.measure.LengthStyle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "new", mixinStandardHelpOptions = true, description = "Makes an empty workspace for a shop.")
final class NewCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Parameters(paramLabel = "FOLDER", description = "where it is made; must not hold one already")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Option(
            names = "--shop",
            paramLabel = "NAME",
            defaultValue = "My nursery",
            description = "the shop's name, printed on every page")
    @SuppressWarnings("NullAway.Init")
    private String shop;

    @Option(
            names = "--base",
            paramLabel = "ADDRESS",
            defaultValue = "http://localhost:7070",
            description = "where printed codes lead (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private String base;

    @Option(
            names = "--database",
            paramLabel = "URL",
            defaultValue = "",
            description =
                    "a PostgreSQL server for the catalog, jdbc:postgresql://host/database; its password comes from"
                            + " $BENCHLEAF_DATABASE_PASSWORD (default: a file in FOLDER)")
    @SuppressWarnings("NullAway.Init")
    private String database;

    NewCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        var address =
                LiveLink.readBase(base).toOptional().orElseThrow(() -> new Refusal(Problem.of("base.unknown", base)));
        Settings settings = new Settings(
                shop, "", address, Locale.ENGLISH, LengthStyle.IMPERIAL, Optional.empty(), Settings.database(database));
        Workspace workspace = new Workspace(folder);
        if (settings.database().isPresent() && !joins(workspace, settings)) {
            Catalog.create(workspace.catalog(settings), clock).close();
        }
        Workspace.create(folder, settings);
        if (settings.database().isEmpty()) {
            Catalog.create(workspace.catalog(settings), clock).close();
        }
        console.out()
                .println("Made " + folder + " for " + shop + ". Load a list with: benchleaf load FILE --workspace "
                        + folder);
        return ErrorReport.DONE;
    }

    /// A second server on the same database finds the catalog there and uses it.
    private boolean joins(Workspace workspace, Settings settings) {
        try {
            Catalog.open(workspace.catalog(settings), clock).close();
            return true;
        } catch (CatalogUnusable notThere) {
            if (notThere.problem().key().equals("catalog.foreign")) {
                return false; // no catalog yet; making one refuses a schema that holds other tables
            }
            throw notThere;
        }
    }
}
