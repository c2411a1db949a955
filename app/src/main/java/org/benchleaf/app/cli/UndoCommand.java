package org.benchleaf.app.cli;

import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.catalog.UndoneImport;
import org.benchleaf.content.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "undo",
        mixinStandardHelpOptions = true,
        description =
                "Takes the last load back that changed anything: plants, facts, names and lots are as they were. Given"
                        + " again, the load before it. Refused when something later stands on it.")
final class UndoCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    UndoCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            UndoneImport undone = benchleaf.imports().undo();
            benchleaf.afterChange();
            console.out()
                    .println(json ? ImportJson.undone(undone) : text(undone, benchleaf.wording(), clock.getZone()));
        }
        return ErrorReport.DONE;
    }

    private static String text(UndoneImport undone, Wording wording, ZoneId zone) {
        return wording.text(
                "undo.done",
                Map.of(
                        "file", undone.file(),
                        "when",
                                DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")
                                        .withZone(zone)
                                        .format(undone.appliedAt()),
                        "out", wording.count(undone.plantsTakenOut()),
                        "restored", wording.count(undone.plantsRestored()),
                        "lots", wording.count((long) undone.lotsTakenOut() + undone.lotsRestored()),
                        "revision", Long.toString(undone.revision().number())));
    }
}
