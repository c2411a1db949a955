package org.benchleaf.catalog.store;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.shared.fact.Source;

/// From a stored fact to its value. Safe for many threads.
final class FactValues {
    private final Map<String, Column<?>> columns = Attributes.all().stream()
            .map(Column::new)
            .collect(Collectors.toUnmodifiableMap(column -> column.attribute.id(), Function.identity()));

    /// The fact that a row holds.
    ///
    /// @return empty for a value that this program cannot read: [StoreCheck] names it, and one bad cell must not
    ///     keep the whole catalog from being read
    Optional<Fact<?>> fact(String attribute, String value, Source source) {
        Column<?> column = columns.get(attribute);
        return column == null ? Optional.empty() : column.fact(value, source);
    }

    /// Whether a stored value can be read.
    boolean canRead(String attribute, String value) {
        Column<?> column = columns.get(attribute);
        return column != null && column.values.of(value).isPresent();
    }

    private static final class Column<T> {
        private final Attribute<T> attribute;
        private final Memo<Optional<Said<T>>> values;

        Column(Attribute<T> attribute) {
            this.attribute = attribute;
            this.values =
                    new Memo<>(text -> attribute.codec().read(text).toOptional().map(value -> new Said<>(value, text)));
        }

        Optional<Fact<?>> fact(String value, Source source) {
            return values.of(value).map(said -> new Fact<>(attribute, said.value, source, false, said.text));
        }
    }

    /// A value and its text, which all facts that say the same share.
    private record Said<T>(T value, String text) {}
}
