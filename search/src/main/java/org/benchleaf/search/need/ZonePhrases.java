package org.benchleaf.search.need;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.need.Wish;

/// `zone 6`, `USDA zone 5b`, `hardy to zone 4`, `zones 5-7`, `6b`.
///
/// A whole zone means its colder half: whoever plants there needs what lives through its coldest gardens.
final class ZonePhrases implements PhraseReader {
    private static final String ZONE = "(\\d{1,2})\\s?([ab])?";
    private final Pattern named;
    private final Pattern bare = Pattern.compile("(\\d{1,2})([ab])");

    ZonePhrases(Vocabulary words) {
        named = Pattern.compile("(?:" + words.any("hardy") + "\\s+)?" + words.any("zone") + "\\s*" + ZONE
                + "(?:\\s*(?:-|/|" + words.any("through") + "|" + words.any("and") + ")\\s*" + ZONE + ")?");
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        Optional<Matcher> found = sentence.match(named, at);
        if (found.isPresent()) {
            return taken(sentence, at, found.get());
        }
        return sentence.match(bare, at)
                .flatMap(match -> HardinessZone.read(match.group())
                        .toOptional()
                        .map(zone -> Taken.of(match.end(), new Wish.HardyIn(zone))));
    }

    private static Optional<Taken> taken(Sentence sentence, int at, Matcher match) {
        Optional<HardinessZone> cold = zone(match.group(1), match.group(2), "a");
        if (cold.isEmpty()) {
            return Optional.empty();
        }
        boolean range = match.group(3) != null;
        Optional<HardinessZone> warm = range ? zone(match.group(3), match.group(4), "b") : Optional.empty();
        if (range && (warm.isEmpty() || warm.get().compareTo(cold.get()) < 0)) {
            return Optional.empty();
        }
        Taken taken = warm.map(zone -> Taken.of(match.end(), new Wish.HardyIn(cold.get()), new Wish.HardyIn(zone)))
                .orElseGet(() -> Taken.of(match.end(), new Wish.HardyIn(cold.get())));
        return Optional.of(
                match.group(2) == null && !range
                        ? taken.with(new Note(
                                "zone-colder-half",
                                sentence.words(at, match.end()),
                                cold.get().toString()))
                        : taken);
    }

    private static Optional<HardinessZone> zone(
            String number, @org.jspecify.annotations.Nullable String letter, String otherwise) {
        return HardinessZone.read(number + (letter == null ? otherwise : letter))
                .toOptional();
    }
}
