package org.benchleaf.app.service;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.shared.name.BotanicalName;

/// What a person types, read as a botanical name, whether a plant of that name is known or not.
final class TypedName {
    private static final Pattern WORDS = Pattern.compile("\\p{L}[\\p{L}\\p{N}’' .-]*");

    private TypedName() {}

    /// The name, when nothing of the text is left over.
    static Optional<BotanicalName> whole(String typed) {
        return NameReader.read(typed) instanceof NameReading.Read(BotanicalName name, var notes)
                ? Optional.of(name)
                : Optional.empty();
    }

    static boolean isGenus(String typed) {
        return whole(typed)
                .filter(name -> name.toString().equals(name.genus()) && typed.equalsIgnoreCase(name.genus()))
                .isPresent();
    }

    /// The same, or what can be read of it: `betula nigra heritage` is a cultivar written without its marks, and
    /// `Quercus alba (white oak)` is none.
    static Optional<BotanicalName> cultivar(String typed) {
        return switch (NameReader.read(typed)) {
            case NameReading.Partly(Optional<BotanicalName> known, String rest, var notes) ->
                known.filter(name -> name.species().isPresent())
                        .map(name -> name.isCultivated() || !WORDS.matcher(rest).matches()
                                ? name
                                : whole(name + " '" + capitalised(rest) + "'").orElse(name));
            case NameReading.Read(BotanicalName name, var notes) -> Optional.of(name);
            case NameReading.Unread unread -> Optional.empty();
        };
    }

    private static String capitalised(String words) {
        return Stream.of(words.split("\\s+"))
                .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
                .collect(Collectors.joining(" "));
    }
}
