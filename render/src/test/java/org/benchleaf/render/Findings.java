package org.benchleaf.render;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/// What is found wrong with pages, those that are refused among them.
final class Findings {
    private Findings() {}

    /// @param job prints them with the printer it is given
    static List<PrintFinding> of(Printer printer, Consumer<Printer> job) {
        List<PrintFinding> findings = new ArrayList<>();
        try {
            job.accept(printer.watchedBy(refusal -> findings.add(PrintFinding.of(refusal)))
                    .checkedBy(findings::add));
        } catch (PrintRefused nothingLeft) {
            if (findings.isEmpty()) {
                throw nothingLeft;
            }
        }
        return findings;
    }
}
