package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.web.Serving;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Serves the live pages that printed codes lead to, until it is stopped.")
final class ServeCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--host",
            paramLabel = "HOST",
            defaultValue = "127.0.0.1",
            description = "where to listen; 0.0.0.0 for every device in the house (default: ${DEFAULT-VALUE})")
    @SuppressWarnings("NullAway.Init")
    private String host;

    @Option(names = "--port", paramLabel = "PORT", defaultValue = "7070", description = "default: ${DEFAULT-VALUE}")
    private int port;

    ServeCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() throws InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        try (Serving serving = Serving.start(workspace.folder(), clock, host, port)) {
            console.out()
                    .println("Serving " + serving.settings().shopName() + " at http://" + host + ":" + serving.port()
                            + "/ (stop with Ctrl-C)");
            console.out().flush();
            Runtime.getRuntime().addShutdownHook(new Thread(stopped::countDown));
            stopped.await();
        }
        return ErrorReport.DONE;
    }
}
