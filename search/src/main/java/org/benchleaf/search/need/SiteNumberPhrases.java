package org.benchleaf.search.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.measure.PhRange;
import org.benchleaf.shared.need.Wish;

/// `pH 6.5`, `soil pH 7.0-7.8`, `heat zone 7`: what is measured on a site.
final class SiteNumberPhrases implements PhraseReader {
    private final Pattern acidity;
    private final Pattern heat;

    SiteNumberPhrases(Vocabulary words) {
        String number = "(\\d{1,2}(?:\\.\\d)?)";
        acidity = Pattern.compile("(?:" + words.any("soil") + "\\s+)?" + words.any("ph") + "\\s*:?\\s*(?:"
                + words.any("in")
                + "\\s+)?" + number + "(?:\\s*(?:-|" + words.any("through") + "|" + words.any("and") + ")\\s*" + number
                + ")?");
        heat = Pattern.compile("(?:ahs\\s+)?" + words.any("heat zone") + "\\s*(\\d{1,2})");
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        return sentence.match(acidity, at)
                .flatMap(SiteNumberPhrases::acidity)
                .or(() -> sentence.match(heat, at).flatMap(SiteNumberPhrases::heat));
    }

    /// A site with a span of acidity asks for a plant that grows at both ends of it.
    private static Optional<Taken> acidity(Matcher match) {
        String text = match.group(2) == null ? match.group(1) : match.group(1) + "-" + match.group(2);
        return PhRange.read(text).toOptional().map(range -> {
            List<Wish> wishes = new ArrayList<>();
            wishes.add(new Wish.GrowsAtPh(range.lowTenths()));
            if (range.highTenths() > range.lowTenths()) {
                wishes.add(new Wish.GrowsAtPh(range.highTenths()));
            }
            return Taken.of(match.end(), wishes).weighing(1.0 / wishes.size());
        });
    }

    private static Optional<Taken> heat(Matcher match) {
        int zone = Integer.parseInt(match.group(1));
        return zone < 1 || zone > 12 ? Optional.empty() : Optional.of(Taken.of(match.end(), new Wish.BearsHeat(zone)));
    }
}
