package org.benchleaf.catalog.names;

import java.util.regex.Pattern;

/// Signs of rights that stand beside a name in the trade: not part of it, and never inside the quotes.
final class Marks {
    static final String SIGNS = "®™℠©";
    private static final Pattern WORD = Pattern.compile(
            "(?:TM|\\(TM\\)|\\(R\\)|\\(SM\\)|PBR|CPBR|PVR|PVP|PPAF|PPA|USPPAF|PP|USPP|(?i:(?:US)?PP#?[0-9][0-9,]*(?:P[0-9])?|ppaf))");
    private static final Pattern IN_BRACKETS = Pattern.compile("(?i)r|tm|sm|pbr|pvp|ppaf|pp ?#?[0-9][0-9,]*");

    private Marks() {}

    static boolean isMark(String word) {
        return WORD.matcher(word).matches();
    }

    /// Whether what stands between round brackets is a mark.
    static boolean isBracketed(String content) {
        return IN_BRACKETS.matcher(content.strip()).matches();
    }

    /// Whether a number must follow: `PP 12345`.
    static boolean wantsNumber(String word) {
        return word.equals("PP") || word.equals("USPP");
    }

    /// Whether the mark belongs to a trade designation and not to a cultivar.
    static boolean isOfTrade(String mark) {
        return mark.length() == 1 && SIGNS.contains(mark) || mark.matches("(?i)\\(?(tm|r|sm)\\)?");
    }
}
