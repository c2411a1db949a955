package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.util.Map;
import java.util.function.IntConsumer;
import org.benchleaf.content.Wording;

/// Says on the stream of remarks how many pages of a long print are written: a bar that moves on a terminal, elsewhere
/// a line every thousand.
final class PressProgress implements IntConsumer, AutoCloseable {
    private static final int STEP = 1000;
    private static final long PAUSE_NANOS = 100_000_000;
    private static final String CLEAR = "\r\u001b[K";

    private final PrintWriter err;
    private final Wording wording;
    private final int all;
    private final boolean terminal;
    private long shownAt = System.nanoTime();
    private boolean shown;

    /// @param all pages there will be, about
    PressProgress(PrintWriter err, Wording wording, int all) {
        this(err, wording, all, Boolean.getBoolean(Progress.TERMINAL));
    }

    PressProgress(PrintWriter err, Wording wording, int all, boolean terminal) {
        this.err = err;
        this.wording = wording;
        this.all = all;
        this.terminal = terminal;
    }

    @Override
    public void accept(int pages) {
        if (terminal) {
            long now = System.nanoTime();
            if (now - shownAt >= PAUSE_NANOS) {
                shownAt = now;
                shown = true;
                err.print(CLEAR + Progress.bar((double) pages / Math.max(1, all)) + " " + words(pages));
                err.flush();
            }
        } else if (pages % STEP == 0 && pages < all) {
            err.println(words(pages));
            err.flush();
        }
    }

    private String words(int pages) {
        return wording.text("print.progress", Map.of("pages", wording.count(pages), "all", wording.count(all)));
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
