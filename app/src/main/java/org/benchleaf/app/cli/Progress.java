package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.util.Map;
import java.util.OptionalDouble;
import org.benchleaf.app.service.LoadProgress;
import org.benchleaf.content.Wording;

/// Says on the stream of remarks how far the loading of a long file is: a bar that moves on a terminal,
/// elsewhere a line every so many rows. A short file is loaded before anything is said.
final class Progress implements LoadProgress, AutoCloseable {
    /// Set by the launcher, which can ask whether the stream of remarks is a terminal.
    static final String TERMINAL = "benchleaf.terminal";

    private static final long STEP = 20_000;
    private static final long LOOK = 256;
    private static final long PAUSE_NANOS = 100_000_000;
    private static final int WIDTH = 30;
    private static final String CLEAR = "\r\u001b[K";

    private final PrintWriter err;
    private final Wording wording;
    private final boolean terminal;
    private long shownAt = System.nanoTime();
    private boolean shown;

    Progress(PrintWriter err, Wording wording) {
        this(err, wording, Boolean.getBoolean(TERMINAL));
    }

    Progress(PrintWriter err, Wording wording, boolean terminal) {
        this.err = err;
        this.wording = wording;
        this.terminal = terminal;
    }

    @Override
    public void read(long rows, OptionalDouble share) {
        if (terminal) {
            if (rows % LOOK == 0) {
                draw("load.progress.read", rows, share);
            }
        } else if (rows % STEP == 0) {
            err.println(wording.text("load.progress", Map.of("rows", wording.count(rows))));
            err.flush();
        }
    }

    @Override
    public void written(long rows, long of) {
        if (terminal) {
            draw("load.progress.written", rows, OptionalDouble.of(of == 0 ? 1 : (double) rows / of));
        } else if (rows % STEP == 0 && rows < of) {
            err.println(
                    wording.text("load.progress.of", Map.of("rows", wording.count(rows), "all", wording.count(of))));
            err.flush();
        }
    }

    private void draw(String word, long rows, OptionalDouble share) {
        long now = System.nanoTime();
        if (now - shownAt < PAUSE_NANOS) {
            return;
        }
        shownAt = now;
        shown = true;
        String bar = share.isPresent() ? bar(share.getAsDouble()) + " " : "";
        err.print(CLEAR + bar + wording.text(word, Map.of("rows", wording.count(rows))));
        err.flush();
    }

    static String bar(double share) {
        int full = (int) Math.round(Math.clamp(share, 0, 1) * WIDTH);
        return "[" + "#".repeat(full) + ".".repeat(WIDTH - full) + "] %3d %%".formatted(Math.round(share * 100));
    }

    /// Takes the bar away.
    @Override
    public void close() {
        if (shown) {
            err.print(CLEAR);
            err.flush();
        }
    }
}
