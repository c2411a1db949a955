package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.util.Map;
import org.benchleaf.content.Wording;

/// Says on the stream of remarks how many rows of a long file are read.
final class Progress {
    private static final long STEP = 20_000;

    private final PrintWriter err;
    private final Wording wording;

    Progress(PrintWriter err, Wording wording) {
        this.err = err;
        this.wording = wording;
    }

    void rows(long count) {
        if (count % STEP == 0) {
            err.println(wording.text("load.progress", Map.of("rows", wording.count(count))));
            err.flush();
        }
    }
}
