package org.benchleaf.catalog;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/// A clock that a test sets.
final class TestClock extends Clock {
    private volatile Instant now;

    TestClock(String now) {
        this.now = Instant.parse(now);
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("tests live in one zone");
    }
}
