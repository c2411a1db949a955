package org.benchleaf.app;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.benchleaf.app.cli.Console;

/// One command as a person runs it: what it printed and the exit code.
record Run(int code, String out, String err) {
    /// A Wednesday in late November, so that "now" and "in spring" mean the same in every run.
    static final Clock NOVEMBER = Clock.fixed(Instant.parse("2026-11-25T15:00:00Z"), ZoneId.of("America/New_York"));

    static Run benchleaf(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new Console(new PrintWriter(out), new PrintWriter(err)), NOVEMBER, arguments);
        return new Run(code, out.toString(), err.toString());
    }
}
