package org.benchleaf.app.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import picocli.CommandLine.Option;

/// Who writes into the ledger, when, why and under which key, as options.
final class EntryOptions {
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

    String person() {
        return who.filter(name -> !name.isBlank())
                .or(() -> Optional.ofNullable(System.getenv("BENCHLEAF_WHO")).filter(name -> !name.isBlank()))
                .orElseGet(() -> System.getProperty("user.name"));
    }

    String why() {
        return why.strip();
    }

    /// The key given, else one short enough to be read out on the telephone, long enough that nobody makes up the same.
    String key() {
        return key.filter(text -> !text.isBlank())
                .orElseGet(() -> UUID.randomUUID().toString().substring(0, 13));
    }

    Optional<Instant> at(ZoneId zone) {
        return at.map(text -> Moments.read(text, zone));
    }

    boolean json() {
        return json;
    }
}
