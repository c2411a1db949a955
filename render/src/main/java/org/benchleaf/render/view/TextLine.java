package org.benchleaf.render.view;

import java.util.List;

/// One line, already broken.
public record TextLine(List<TextRun> runs) {
    public TextLine {
        runs = List.copyOf(runs);
    }
}
