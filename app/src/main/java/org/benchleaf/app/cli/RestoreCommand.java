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
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Makes a workspace of a backup. Nothing of an existing workspace is overwritten.")
final class RestoreCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(paramLabel = "BACKUP", description = "the folder that backup made")
    @SuppressWarnings("NullAway.Init")
    private Path backup;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    RestoreCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        return CopyText.report(
                new Backups(clock).restore(Workspace.at(backup), workspace.folder()), "restore.done", json, console);
    }
}
