package org.benchleaf.app.cli;

import org.benchleaf.app.Refusal;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// Turns what a person typed and nobody understood into a refusal.
final class Readings {
    private Readings() {}

    static <T> T read(Reading<T> reading) {
        return switch (reading) {
            case Reading.Read<T>(T value) -> value;
            case Reading.Refused<T>(Problem problem) -> throw new Refusal(problem);
        };
    }
}
