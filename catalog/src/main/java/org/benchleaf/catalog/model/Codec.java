package org.benchleaf.catalog.model;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;

/// How a fact's value is read from a cell and written to the store; what is written reads back equal.
///
/// @param <T> the kind of value
public interface Codec<T> {
    Reading<T> read(String text);

    String write(T value);

    /// A value that reads itself and writes itself by `toString`.
    static <T> Codec<T> of(Function<String, Reading<T>> reader) {
        return of(reader, Object::toString);
    }

    static <T> Codec<T> of(Function<String, Reading<T>> reader, Function<T, String> writer) {
        return new Codec<>() {
            @Override
            public Reading<T> read(String text) {
                return reader.apply(text);
            }

            @Override
            public String write(T value) {
                return writer.apply(value);
            }
        };
    }

    /// One word of a vocabulary.
    static <E extends Enum<E> & Term> Codec<E> term(Class<E> vocabulary) {
        return of(text -> Term.read(vocabulary, text), Term::term);
    }

    /// Several words of a vocabulary; at least one.
    static <E extends Enum<E> & Term> Codec<Set<E>> terms(Class<E> vocabulary) {
        return of(
                text -> Term.readSet(vocabulary, text)
                        .flatMap(set -> set.isEmpty() ? Reading.refused("text.empty", text) : Reading.of(set)),
                Term::write);
    }

    /// Any text that is not blank.
    static Codec<String> text() {
        return of(text -> text.isBlank() ? Reading.refused("text.empty", text) : Reading.of(text.strip()));
    }

    /// Texts parted by `;`; at least one.
    static Codec<List<String>> texts() {
        return of(
                text -> {
                    List<String> pieces = Arrays.stream(text.split(";"))
                            .map(String::strip)
                            .filter(piece -> !piece.isEmpty())
                            .toList();
                    return pieces.isEmpty() ? Reading.refused("text.empty", text) : Reading.of(pieces);
                },
                pieces -> String.join("; ", pieces));
    }
}
