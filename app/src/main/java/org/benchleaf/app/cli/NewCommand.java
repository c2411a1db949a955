package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.Settings;
import org.benchleaf.app.Workspace;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.measure.LengthStyle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "new", mixinStandardHelpOptions = true, description = "Makes an empty workspace for a shop.")
final class NewCommand implements Callable<Integer> {
    private final Console console;

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

    NewCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        var address =
                LiveLink.readBase(base).toOptional().orElseThrow(() -> new Refusal(Problem.of("base.unknown", base)));
        Workspace workspace =
                Workspace.create(folder, new Settings(shop, "", address, Locale.ENGLISH, LengthStyle.IMPERIAL));
        Catalog.create(workspace.database()).close();
        console.out()
                .println("Made " + folder + " for " + shop + ". Load a list with: benchleaf load FILE --workspace "
                        + folder);
        return ErrorReport.DONE;
    }
}
