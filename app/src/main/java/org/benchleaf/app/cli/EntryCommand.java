package org.benchleaf.app.cli;

import java.time.Clock;
import java.time.Instant;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.LedgerResult;
import org.benchleaf.catalog.StockLedger;
import org.benchleaf.catalog.ledger.Balance;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import picocli.CommandLine.Mixin;

/// A command that writes one entry into the ledger; its kind says what.
abstract class EntryCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final EntryOptions given = new EntryOptions();

    EntryCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    /// What is to be written of which lot.
    record Said(String lot, StockEvent event) {}

    abstract Said said(StockLedger ledger);

    Clock clock() {
        return clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            Said said = said(benchleaf.ledger());
            LedgerEntry entry = new LedgerEntry(
                    said.lot(),
                    said.event(),
                    given.person(),
                    given.why(),
                    given.key(),
                    given.at(clock.getZone()));
            switch (benchleaf.ledger().record(entry)) {
                case LedgerResult.Applied(Balance lot) -> write(benchleaf, entry, lot, false);
                case LedgerResult.AlreadyApplied(Balance lot) -> write(benchleaf, entry, lot, true);
                case LedgerResult.Refused(var problem) -> throw new Refusal(problem);
            }
            benchleaf.afterChange();
        }
        return ErrorReport.DONE;
    }

    private void write(Benchleaf benchleaf, LedgerEntry entry, Balance lot, boolean again) {
        Instant now = clock.instant();
        if (given.json()) {
            console.out().println(new StockJson(clock.getZone()).entry(entry, lot, again, now));
            return;
        }
        StockWords words = new StockWords(benchleaf.wording(), clock.getZone());
        words.entry(entry, lot, again).forEach(console.out()::println);
        console.out().println(words.asOf(benchleaf.now()));
    }
}
