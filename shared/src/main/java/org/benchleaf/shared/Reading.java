package org.benchleaf.shared;

import java.util.Optional;
import java.util.function.Function;

/// The outcome of reading a text as a value: the value, or the problem that kept it from being one.
///
/// @param <T> the kind of value
public sealed interface Reading<T> {
    /// The text was understood.
    record Read<T>(T value) implements Reading<T> {}

    /// The text was not understood, or is outside what the value allows.
    record Refused<T>(Problem problem) implements Reading<T> {}

    static <T> Reading<T> of(T value) {
        return new Read<>(value);
    }

    static <T> Reading<T> refused(String key, String read) {
        return new Refused<>(Problem.of(key, read));
    }

    /// The value, when the text was understood.
    default Optional<T> toOptional() {
        return this instanceof Read<T>(T value) ? Optional.of(value) : Optional.empty();
    }

    /// The problem, when it was not.
    default Optional<Problem> refusal() {
        return this instanceof Refused<T>(Problem problem) ? Optional.of(problem) : Optional.empty();
    }

    default <R> Reading<R> map(Function<? super T, ? extends R> change) {
        return switch (this) {
            case Read<T>(T value) -> new Read<>(change.apply(value));
            case Refused<T>(Problem problem) -> new Refused<>(problem);
        };
    }

    default <R> Reading<R> flatMap(Function<? super T, Reading<R>> next) {
        return switch (this) {
            case Read<T>(T value) -> next.apply(value);
            case Refused<T>(Problem problem) -> new Refused<>(problem);
        };
    }

    /// The value of a text known to be good, such as a constant in code or a stored cell.
    ///
    /// @throws IllegalArgumentException when it was refused after all
    default T orThrow() {
        return switch (this) {
            case Read<T>(T value) -> value;
            case Refused<T>(Problem problem) ->
                throw new IllegalArgumentException(problem.key() + " " + problem.details());
        };
    }
}
