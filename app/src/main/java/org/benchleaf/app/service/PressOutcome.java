package org.benchleaf.app.service;

import java.util.List;
import org.benchleaf.render.PrintFinding;

/// What came of a print.
///
/// @param pages written; 0 when nothing was
/// @param findings what should be put right
public record PressOutcome(int pages, List<PrintFinding> findings) {
    public PressOutcome {
        findings = List.copyOf(findings);
    }
}
