package org.benchleaf.app;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.benchleaf.app.cli.Console;
import org.benchleaf.app.cli.RootCommand;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.LengthStyle;
import picocli.CommandLine;

/// The program's start: words of the command line in, exit code out.
public final class Main {
    /// Lucene recommends a JDK module in incubation at every start; held here so that the level is not forgotten.
    private static final Logger LUCENE = Logger.getLogger("org.apache.lucene.internal.vectorization");

    /// What is wrong with a drawing is told by us, in one line.
    private static final Logger DRAWINGS = Logger.getLogger("com.github.weisj.jsvg");

    private Main() {}

    public static void main(String[] arguments) {
        LUCENE.setLevel(Level.SEVERE);
        DRAWINGS.setLevel(Level.OFF);
        PrintWriter out = writer(System.out);
        PrintWriter err = writer(System.err);
        int code = run(new Console(out, err), Clock.systemDefaultZone(), arguments);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /// Runs one command.
    ///
    /// @return the exit code: see [ErrorReport]
    public static int run(Console console, Clock clock, String... arguments) {
        ErrorReport errors = new ErrorReport(Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL));
        CommandLine command = RootCommand.commandLine(console, clock, arguments);
        command.setOut(console.out());
        command.setErr(console.err());
        command.setExecutionExceptionHandler((failure, line, parsed) -> errors.report(failure, console.err()));
        int code = command.execute(arguments);
        console.out().flush();
        console.err().flush();
        return code;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, false, StandardCharsets.UTF_8);
    }
}
