package org.benchleaf.search.need;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.Shipment;

/// `ship to PA`, `delivered to Suffolk County, New York`, `in Pennsylvania`: where sale rules are judged.
///
/// The day is that of the week asked for, else today.
final class ShipPhrases {
    private static final Pattern WORD = Pattern.compile("\\p{L}+\\.?");
    private static final Pattern COUNTY =
            Pattern.compile("(?<county>\\p{L}+(?: \\p{L}+)?) (?:county|co\\.?),?\\s+(?:in\\s+)?");
    private static final int MOST_WORDS = 4;

    private final Vocabulary words;
    private final Pattern lead;
    private final Pattern in;
    private final Optional<Destination> home;

    /// @param home where the shop ships from
    ShipPhrases(Vocabulary words, Optional<Destination> home) {
        this.words = words;
        lead = Pattern.compile(words.any("ship to") + "\\s+(?:the\\s+state\\s+of\\s+)?");
        in = Pattern.compile(words.any("located in") + "\\s+(?:the\\s+state\\s+of\\s+)?");
        this.home = home;
    }

    PhraseReader on(LocalDate today) {
        return (sentence, at) -> read(sentence, at, today);
    }

    private Optional<Taken> read(Sentence sentence, int at, LocalDate today) {
        Optional<Matcher> ship = sentence.match(lead, at);
        if (ship.isPresent()) {
            return place(sentence, ship.get().end(), false).map(found -> taken(found, today));
        }
        return sentence.match(in, at)
                .flatMap(match -> place(sentence, match.end(), true))
                .map(found -> taken(found, today)
                        .with(new Note(
                                "in-is-ship-to",
                                sentence.words(at, found.end()),
                                found.place().region().name())));
    }

    private Taken taken(Found found, LocalDate today) {
        return Taken.of(found.end(), new Wish.ShipTo(new Shipment(found.place(), today, home)));
    }

    private Optional<Found> place(Sentence sentence, int at, boolean capitals) {
        Optional<Matcher> county = sentence.match(COUNTY, at);
        if (county.isPresent()) {
            String name = sentence.original()
                    .substring(county.get().start("county"), county.get().end("county"));
            Optional<Found> within = region(sentence, county.get().end(), capitals)
                    .map(found ->
                            new Found(found.end(), new Destination(found.place().region(), Optional.of(name))));
            if (within.isPresent()) {
                return within;
            }
        }
        return region(sentence, at, capitals);
    }

    /// The longest name of a state or province from a place on.
    ///
    /// @param capitals whether a postal code must be in capitals, for `in`, `or` and `me` are words too
    private Optional<Found> region(Sentence sentence, int at, boolean capitals) {
        Optional<Found> longest = Optional.empty();
        Matcher word = WORD.matcher(sentence.plain());
        int next = at;
        for (int count = 0; count < MOST_WORDS && word.find(next) && word.start() == next; count++) {
            int end = word.end();
            String text = sentence.words(at, end);
            boolean code = text.length() == 2;
            if (!code || !capitals || text.equals(text.toUpperCase(Locale.ROOT))) {
                Optional<Region> region = words.region(text);
                longest = region.isPresent() ? Optional.of(new Found(end, Destination.of(region.get()))) : longest;
            }
            next = Math.min(sentence.plain().length(), end + 1);
        }
        return longest;
    }

    private record Found(int end, Destination place) {}
}
