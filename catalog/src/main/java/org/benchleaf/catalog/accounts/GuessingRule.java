package org.benchleaf.catalog.accounts;

import java.time.Duration;
import java.time.Instant;

/// How guessing is held off: after some free attempts each further one waits twice as long as the one
/// before, up to a quarter of an hour; a day without a failure forgets them. What failed is stored, so
/// that starting anew does not help.
enum GuessingRule {
    /// Attempts on one name from wherever: slows a guesser with many addresses.
    ACCOUNT(8, Duration.ofSeconds(30)),
    /// Attempts from one address on whatever names.
    ADDRESS(15, Duration.ofSeconds(30)),
    /// Attempts on one name from an address where its owner signed in lately: they are held up by no
    /// stranger.
    KNOWN_PLACE(5, Duration.ofSeconds(30));

    static final Duration LONGEST = Duration.ofMinutes(15);
    static final Duration FORGOTTEN_AFTER = Duration.ofDays(1);

    private final int free;
    private final Duration first;

    GuessingRule(int free, Duration first) {
        this.free = free;
        this.first = first;
    }

    /// @param failures so far, the last of them at `last`
    /// @return how long until the next attempt is looked at; zero when it is at once
    Duration wait(int failures, Instant last, Instant now) {
        if (failures < free) {
            return Duration.ZERO;
        }
        int doublings = Math.min(failures - free, 16);
        Duration pause = first.multipliedBy(1L << doublings);
        Instant open = last.plus(pause.compareTo(LONGEST) > 0 ? LONGEST : pause);
        return open.isAfter(now) ? Duration.between(now, open) : Duration.ZERO;
    }
}
