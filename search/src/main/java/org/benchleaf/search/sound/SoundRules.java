package org.benchleaf.search.sound;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// The table of spellings and sounds: botanical Latin as gardeners speak it, and the English words a recording makes
/// of it. From memory of common usage, no source; held by the test sets of misheard names.
///
/// Sounds are written as letters: C as in cherry (and the ch of Latin, which some say as k), S as in shell, T as in
/// thin, j as in jade, y as in yew; vowels are five, since they are heard least surely.
final class SoundRules {
    /// For each first letter its rules, the longest spelling first.
    private static final Map<Character, List<SoundRule>> BY_LETTER = Stream.of(
                    // silent beginnings of Greek: Pseudotsuga, Ptelea, Pneumonanthe, Mnemosilla, Cneorum, Ctenanthe,
                    // Tsuga
                    start("ps s, pt t, pn n, kn n, gn n, mn n, cn n, ct t, wr r, ts s, tz s, x z, gh g, wh w, h h"),
                    start("eu yu, ew yu, eo io, ye yi"),
                    rules(SoundRule.Place.START_VOWEL, "y y"),
                    // soft c and g; ti and ci before a vowel: Nicotiana, Acacia
                    rules(SoundRule.Place.FRONT, "c s, sc s, cc ks, xc ks, g j, dg j"),
                    rules(SoundRule.Place.BACK, "ti Si, ci Si"),
                    rules(
                            SoundRule.Place.END,
                            "mb m, mn m, ea ia, oe oi, ue u, ae i, ough o, ugh u, ey i, ie i, ye i, er ar, re ar, gue g, que k"),
                    any("tch C, sch sk, cch k, cqu kw, ck k, ch C, c k, qu kw, q k, ph f, th T, tth T, rrh r, rh r"),
                    any("sh S, x ks, dge j, gh, igh i, eigh e, augh o, ough o, wh w, kh k, stle sl, g g"),
                    any("eau o, eye i, aye i, uy i, ae e, oe e, ee i, ea ia, ai e, ay e, ei i, ie i, ey i, oo u, ou u"),
                    any(
                            "ow o, oa o, oi oi, oy oi, au o, aw o, ew u, eu u, uh a, ah a, eh e, oh o, y i, you yu, yew yu"),
                    any(
                            "a a, e e, i i, o o, u u, b b, d d, f f, j j, k k, l l, m m, n n, p p, r r, s s, t t, v v, w w, z z"))
            .flatMap(List::stream)
            .sorted((one, other) -> one.spelling().length() != other.spelling().length()
                    ? other.spelling().length() - one.spelling().length()
                    : one.place().compareTo(other.place()))
            .collect(Collectors.groupingBy(rule -> rule.spelling().charAt(0)));

    private static final SoundRule[][] TABLE = table();

    private SoundRules() {}

    /// The rules of spellings that begin with a letter, the longest first; none for other signs.
    static SoundRule[] of(char letter) {
        return letter >= 'a' && letter <= 'z' ? TABLE[letter - 'a'] : TABLE['z' - 'a' + 1];
    }

    private static SoundRule[][] table() {
        SoundRule[][] table = new SoundRule['z' - 'a' + 2][0];
        BY_LETTER.forEach((letter, rules) -> table[letter - 'a'] = rules.toArray(SoundRule[]::new));
        return table;
    }

    private static List<SoundRule> start(String rules) {
        return rules(SoundRule.Place.START, rules);
    }

    private static List<SoundRule> any(String rules) {
        return rules(SoundRule.Place.ANY, rules);
    }

    private static List<SoundRule> rules(SoundRule.Place place, String rules) {
        return Stream.of(rules.split(", "))
                .map(rule -> rule.split(" "))
                .map(pair -> new SoundRule(pair[0], place, pair.length > 1 ? pair[1] : ""))
                .toList();
    }
}
