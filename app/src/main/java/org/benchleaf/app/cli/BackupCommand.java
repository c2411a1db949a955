package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.benchleaf.app.Workspace;
import org.benchleaf.app.service.Backups;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Copies the workspace while work goes on, then opens the copy and looks through all of it.")
final class BackupCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(
            paramLabel = "FOLDER",
            description = "where copies lie, best on another disk; each gets a folder of its own, named by the moment")
    @SuppressWarnings("NullAway.Init")
    private Path into;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    BackupCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        return CopyText.report(
                new Backups(clock).make(Workspace.at(workspace.folder()), into), "backup.done", json, console);
    }
}
