package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.benchleaf.catalog.prints.PrintEntry;
import org.benchleaf.render.PrintFinding;

/// Things about to be printed, with their entries for the ledger and what the catalog says against them.
///
/// @param <T> the model of one page or label
final class PrintBatch<T> {
    private final List<T> models = new ArrayList<>();
    private final List<PrintEntry> entries = new ArrayList<>();
    private final List<PrintFinding> findings = new ArrayList<>();

    /// Adds it in as many copies as its entry says.
    void add(T model, PrintEntry entry) {
        models.addAll(Collections.nCopies(entry.copies(), model));
        entries.add(entry);
    }

    void found(List<PrintFinding> more) {
        findings.addAll(more);
    }

    boolean isEmpty() {
        return models.isEmpty();
    }

    List<T> models() {
        return models;
    }

    List<PrintEntry> entries() {
        return entries;
    }

    List<PrintFinding> findings() {
        return findings;
    }
}
