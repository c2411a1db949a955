package org.benchleaf.app.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Set;
import org.benchleaf.app.Refusal;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;

/// Reads what was given with an option, or refuses it with the reason.
final class Given {
    private Given() {}

    static <T> T ok(Reading<T> reading) {
        return switch (reading) {
            case Reading.Read<T>(T value) -> value;
            case Reading.Refused<T>(Problem problem) -> throw new Refusal(problem);
        };
    }

    static <E extends Enum<E> & Term> E word(Class<E> vocabulary, String text) {
        return ok(Term.read(vocabulary, text));
    }

    /// Several words, at least one.
    static <E extends Enum<E> & Term> Set<E> words(Class<E> vocabulary, String text) {
        Set<E> words = ok(Term.readSet(vocabulary, text));
        if (words.isEmpty()) {
            throw new Refusal(Problem.of("text.empty", text));
        }
        return words;
    }

    static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException noDay) {
            throw new Refusal(Problem.of("rules.day", text));
        }
    }
}
