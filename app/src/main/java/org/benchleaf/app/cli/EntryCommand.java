package org.benchleaf.app.cli;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
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
import picocli.CommandLine.Option;

/// A command that writes one entry into the ledger; its kind says what.
abstract class EntryCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--who",
            paramLabel = "NAME",
            description = "the person (default: $BENCHLEAF_WHO, else the user of this machine)")
    private Optional<String> who = Optional.empty();

    @Option(
            names = "--why",
            paramLabel = "TEXT",
            defaultValue = "",
            description = "a reason, a customer, an order number")
    @SuppressWarnings("NullAway.Init")
    private String why;

    @Option(
            names = "--key",
            paramLabel = "KEY",
            description = "what the entry is called: sent twice under one key it counts once (default: made up)")
    private Optional<String> key = Optional.empty();

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "when it happened, such as 2026-11-25T07:30 (default: now)")
    private Optional<String> at = Optional.empty();

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

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
                    person(),
                    why.strip(),
                    key.filter(text -> !text.isBlank()).orElseGet(EntryCommand::madeUp),
                    at.map(text -> Moments.read(text, clock.getZone())));
            switch (benchleaf.ledger().record(entry)) {
                case LedgerResult.Applied(Balance lot) -> write(benchleaf, entry, lot, false);
                case LedgerResult.AlreadyApplied(Balance lot) -> write(benchleaf, entry, lot, true);
                case LedgerResult.Refused(var problem) -> throw new Refusal(problem);
            }
            benchleaf.afterChange();
        }
        return ErrorReport.DONE;
    }

    private String person() {
        return who.filter(name -> !name.isBlank())
                .or(() -> Optional.ofNullable(System.getenv("BENCHLEAF_WHO")).filter(name -> !name.isBlank()))
                .orElseGet(() -> System.getProperty("user.name"));
    }

    /// Short enough to be read out on the telephone, long enough that nobody makes up the same.
    private static String madeUp() {
        return UUID.randomUUID().toString().substring(0, 13);
    }

    private void write(Benchleaf benchleaf, LedgerEntry entry, Balance lot, boolean again) {
        Instant now = clock.instant();
        if (json) {
            console.out().println(new StockJson(clock.getZone()).entry(entry, lot, again, now));
            return;
        }
        StockWords words = new StockWords(benchleaf.wording(), clock.getZone());
        words.entry(entry, lot, again).forEach(console.out()::println);
        console.out().println(words.asOf(benchleaf.now()));
    }
}
