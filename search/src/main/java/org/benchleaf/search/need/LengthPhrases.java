package org.benchleaf.search.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.stock.RootPackage;
import org.benchleaf.shared.stock.StockSize;
import org.jspecify.annotations.Nullable;

/// `under 5 ft`, `6-8 ft`, `at least 10 feet tall`, `up to 6 ft wide`, `5 ft or less`: mature height or spread.
///
/// A single length without a word before or after is about that height.
final class LengthPhrases implements PhraseReader {
    private static final String NUMBER = "\\d{1,3}(?:\\.\\d+)?";
    /// `40 in #3` is a count in a size, not forty inches.
    private static final String UNIT =
            "(?:ft\\.?|feet|foot|'|inches|inch|in\\.?(?=\\s+(?:tall|high|wide|or|max|min)\\b)"
                    + "|in\\.?(?!\\s*(?:#|no\\b|a\\b|\\d|\\p{L}{3,}))|\"|cm|metres?|meters?|mm|m)";
    private static final double ABOUT = 0.2;

    private static final double CM_PER_FOOT = 30.48;
    /// Plants sold by height, balled and burlapped, have this height at least and at most, and from here on come in
    /// steps of two feet. Common practice after ANSI Z60.1, from memory.
    private static final int LEAST_FEET = 3;

    private static final int MOST_FEET = 14;
    private static final int LARGE_FEET = 8;

    private final Vocabulary words;
    private final Pattern pattern;

    LengthPhrases(Vocabulary words) {
        this.words = words;
        String unit = words.table("units").isEmpty() ? UNIT : "(?:" + words.any("units") + "|" + UNIT + ")";
        String feetAndInches = NUMBER + "\\s*(?:ft|feet|foot|')\\s*\\d{1,2}\\s*(?:inches|inch|in|\")";
        String range = NUMBER + "\\s*" + unit + "?\\s*(?:-|" + words.any("through") + ")\\s*" + NUMBER + "\\s*" + unit;
        String single = NUMBER + "\\s*" + unit;
        pattern = Pattern.compile("(?:(?<most>" + words.any("at most") + ")|(?<least>" + words.any("at least")
                + "))?\\s*(?<length>" + feetAndInches + "|" + range + "|" + single + ")"
                + "(?:\\s*(?<wide>" + words.any("wide") + ")|\\s*(?<tall>" + words.any("tall") + "))?"
                + "(?:\\s*(?<less>" + words.any("or less") + ")|\\s*(?<more>" + words.any("or more") + "))?"
                + "(?:\\s*(?<tallAfter>" + words.any("tall") + "))?(?:\\s*(?<ten>" + words.any("at ten years") + "))?");
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        Optional<Matcher> found = sentence.match(pattern, at);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Matcher match = found.get();
        String length = match.group("length").replaceAll("(?<=ft|in)\\.", "").replaceAll("\\s*-\\s*", "-");
        for (Map.Entry<String, String> unit : words.table("units").entrySet()) {
            length = length.replaceAll("\\b" + unit.getKey() + "\\b", unit.getValue());
        }
        length = length.replaceAll("\\s+" + words.any("through") + "\\s+", "-");
        return LengthRange.read(length).toOptional().flatMap(range -> taken(sentence, at, match, range));
    }

    /// `no wider than`, `narrower than`: the bound itself says that it is about the spread.
    private boolean wider(@Nullable String bound) {
        return bound != null
                && words.meaning("wider", bound.replaceAll("\\s+", " ")).isPresent();
    }

    private Optional<Taken> taken(Sentence sentence, int at, Matcher match, LengthRange range) {
        boolean wide = match.group("wide") != null || wider(match.group("most")) || wider(match.group("least"));
        boolean most = match.group("most") != null || match.group("less") != null;
        boolean least = match.group("least") != null || match.group("more") != null;
        boolean single = range.lowCm() == range.highCm();
        boolean about = single && !most && !least && !wide;
        List<Wish> wishes = new ArrayList<>();
        // a width is the room there is; nothing asks for a plant to be wide unless it says so
        if (wide ? least : !most) {
            wishes.add(bound(match, wide, false, about ? part(range.lowCm(), 1 - ABOUT) : range.lowCm()));
        }
        if (!least) {
            wishes.add(bound(match, wide, true, about ? part(range.highCm(), 1 + ABOUT) : range.highCm()));
        }
        Taken taken = Taken.of(match.end(), wishes);
        if (wide || match.group("ten") != null) {
            return Optional.of(taken);
        }
        String key = about ? "height-about" : "height-when-grown";
        Taken read = taken.with(new Note(key, sentence.words(at, match.end()), range.toString()));
        boolean unsaid = !most && !least && match.group("tall") == null && match.group("tallAfter") == null;
        return Optional.of(
                unsaid ? asSold(range).map(size -> read.or(List.of(size))).orElse(read) : read);
    }

    /// `6 foot arborvitae` may be the size it is sold in: field-grown plants are sold by steps of height.
    private static Optional<Wish> asSold(LengthRange range) {
        int low = (int) Math.round(range.lowCm() / CM_PER_FOOT);
        int high = (int) Math.round(range.highCm() / CM_PER_FOOT);
        boolean wholeFeet = Math.abs(low * CM_PER_FOOT - range.lowCm()) < 1;
        if (!wholeFeet || low < LEAST_FEET || high > MOST_FEET) {
            return Optional.empty();
        }
        int upTo = high > low ? high : low + (low < LARGE_FEET ? 1 : 2);
        StockSize size = new StockSize.Height(low * 12, upTo * 12, RootPackage.BALLED_AND_BURLAPPED);
        return Optional.of(new Wish.InStock(1, Optional.of(size), Optional.empty()));
    }

    private static Wish bound(Matcher match, boolean wide, boolean most, int cm) {
        if (match.group("ten") != null) {
            Wish.Bound across = most ? Wish.Bound.NO_WIDER : Wish.Bound.AT_LEAST_WIDE;
            Wish.Bound up = most ? Wish.Bound.NO_TALLER : Wish.Bound.AT_LEAST_TALL;
            return new Wish.AtTenYears(wide ? across : up, cm);
        }
        if (wide) {
            return most ? new Wish.NoWiderThan(cm) : new Wish.AtLeastWide(cm);
        }
        return most ? new Wish.NoTallerThan(cm) : new Wish.AtLeastTall(cm);
    }

    private static int part(int cm, double factor) {
        return Math.max(1, (int) Math.round(cm * factor));
    }
}
