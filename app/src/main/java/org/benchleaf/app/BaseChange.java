package org.benchleaf.app;

import java.net.URI;
import java.util.List;
import org.benchleaf.catalog.prints.PrintLedger;
import org.benchleaf.catalog.prints.PrintedBase;

/// What it means for paper in the field when codes lead to another address from now on. Paper cannot be changed, so
/// this is asked before the settings are.
///
/// @param to the address to be
/// @param left addresses that printed codes lead to and that are another than that, the newest first
public record BaseChange(URI to, List<PrintedBase> left) {
    public BaseChange {
        left = List.copyOf(left);
    }

    static BaseChange of(PrintLedger ledger, URI to) {
        return new BaseChange(
                to,
                ledger.bases().stream()
                        .filter(base -> !base.base().equals(to.toString()))
                        .toList());
    }

    /// How many pieces of paper lead elsewhere then: open only as long as their address answers.
    public long copies() {
        return left.stream().mapToLong(PrintedBase::copies).sum();
    }
}
