package org.benchleaf.search.need;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.need.Wish;

/// `ZIP 19380`, `postal code 19380`: the zone of a place, from the shop's table. A bare number of five digits
/// is a code
/// when the table has it, and a note says so; else it is a count.
final class PostalPhrases implements PhraseReader {
    private final PostalZones zones;
    private final Pattern named;
    private final Pattern bare = Pattern.compile("(\\d{5})(?:-\\d{4})?");

    PostalPhrases(Vocabulary words, PostalZones zones) {
        this.zones = zones;
        named = Pattern.compile(
                "(?:" + words.any("in") + "\\s+)?" + words.any("postal code") + "\\s*:?\\s*(\\d{5})(?:-\\d{4})?");
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        return sentence.match(named, at)
                .or(() -> sentence.match(bare, at))
                .flatMap(match -> taken(sentence, at, match));
    }

    private Optional<Taken> taken(Sentence sentence, int at, Matcher match) {
        return zones.zone(match.group(1))
                .map(zone -> Taken.of(match.end(), new Wish.HardyIn(zone))
                        .with(new Note("zone-of-postal-code", sentence.words(at, match.end()), zone.toString())));
    }
}
