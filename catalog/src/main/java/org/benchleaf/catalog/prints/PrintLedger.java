package org.benchleaf.catalog.prints;

import java.time.Instant;
import java.util.List;

/// The print ledger of a catalog; entries are only added. Safe for many threads.
public interface PrintLedger {
    /// Writes down what was printed in one go; when this returns, it survives a power cut.
    void add(List<PrintEntry> printed);

    /// The same ledger, in the hands of somebody: what is added from now on is written down as printed by them.
    PrintLedger by(String who);

    /// The newest entry of everything that was printed as a document of that kind since then, in the order of printing.
    List<PrintedEntry> newest(String document, Instant since);

    /// The newest entries of all kinds, newest first.
    ///
    /// @param most how many, 1 or more
    List<PrintedEntry> last(int most);

    /// Servers on which printed codes depend, the newest first.
    List<PrintedBase> bases();
}
