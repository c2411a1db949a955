package org.benchleaf.search.fit;

import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Reason.Shortfall;
import org.benchleaf.shared.need.Wish;

/// Whether a plant is native: the states where it grows wild decide; without them, a range that lies wholly
/// elsewhere.
final class OriginJudge {
    /// Anything that may mean the United States or Canada keeps a range from counting as elsewhere.
    private static final Pattern MAYBE_HERE = Pattern.compile(
            "america|\\bu\\.?s\\.?a?\\b|united states|canad|appalach|great plains|prairie|alaska|new england"
                    + "|circum|northern hemisphere|holarctic|temperate|worldwide|cosmopolitan|hybrid|garden|cultiva"
                    + "|atlantic|pacific coast|mexic|greenland|unknown|uncertain",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern ELSEWHERE = Pattern.compile(
            "china|chinese|japan|korea|manchuria|mongolia|taiwan|himalaya|india\\b|nepal|bhutan|tibet|vietnam|asia"
                    + "|siberia|russia|sakhalin|kuril|europe|mediterranean|balkan|caucasus|turkey|iran\\b|persia"
                    + "|africa|madeira|canary islands|spain|portugal|italy|greece|france|britain|british isles"
                    + "|australia|tasmania|new zealand|chile|argentina|brazil|peru|andes|afghanistan|carpath|alps",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern NORTH_AMERICA = Pattern.compile(
            "north(?:eastern|western|ern)? america|united states|canada|appalach", Pattern.CASE_INSENSITIVE);

    private static final Pattern MIXED = Pattern.compile("hybrid|garden|cultiva", Pattern.CASE_INSENSITIVE);

    private OriginJudge() {}

    static Reason judge(Wish.NativeTo wish, Facts facts) {
        var states = facts.fact(Attributes.NATIVE_STATES);
        if (states.isPresent()) {
            return FitJudge.when(
                    wish,
                    states,
                    known -> FitJudge.so(wish.region().map(known::contains).orElse(true)));
        }
        Optional<Fact<String>> range = facts.fact(Attributes.NATIVE_RANGE);
        if (range.isEmpty()) {
            return new Reason.Unknown(wish);
        }
        String text = range.get().value();
        if (ELSEWHERE.matcher(text).find() && !MAYBE_HERE.matcher(text).find()) {
            return new Reason.Missed(wish, FitJudge.seen(range.get()), new Shortfall.NotSo());
        }
        boolean anywhereHere =
                NORTH_AMERICA.matcher(text).find() && !MIXED.matcher(text).find();
        return wish.region().isEmpty() && anywhereHere
                ? new Reason.Met(wish, FitJudge.seen(range.get()))
                : new Reason.Unknown(wish);
    }
}
