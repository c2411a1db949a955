package org.benchleaf.catalog.names;

import java.util.OptionalInt;

/// Finds which quote closes a cultivar epithet, apostrophes inside it notwithstanding: `'Rosie O'Grady'`.
final class Quotes {
    private static final String SINGLE = "'‘’‚‛`´′";
    private static final String DOUBLE = "\"“”„‟«»″";

    private Quotes() {}

    static boolean isQuote(char c) {
        return SINGLE.indexOf(c) >= 0 || DOUBLE.indexOf(c) >= 0;
    }

    static boolean isPlain(char c) {
        return c == '\'';
    }

    /// The place of the quote that closes the one at `open`; empty when none does.
    ///
    /// A quote after a blank opens one more, a quote before a blank or the end closes one. When all are closed and
    /// the next quote is again a closing one, the last was an apostrophe: `'Growers' Choice'`.
    static OptionalInt closing(String text, int open) {
        String family = SINGLE.indexOf(text.charAt(open)) >= 0 ? SINGLE : DOUBLE;
        int depth = 1;
        int last = -1;
        for (int at = open + 1; at < text.length(); at++) {
            if (family.indexOf(text.charAt(at)) < 0) {
                continue;
            }
            boolean opens = opens(text, at);
            boolean closes = closes(text, at) && !opens;
            if (opens) {
                if (depth == 0) {
                    break;
                }
                depth++;
            } else if (closes) {
                last = at;
                depth = Math.max(0, depth - 1);
            }
        }
        return last < 0 ? OptionalInt.empty() : OptionalInt.of(last);
    }

    private static boolean opens(String text, int at) {
        return at + 1 < text.length()
                && Character.isWhitespace(text.charAt(at - 1))
                && !Character.isWhitespace(text.charAt(at + 1));
    }

    private static boolean closes(String text, int at) {
        return at + 1 == text.length() || !Character.isLetterOrDigit(text.charAt(at + 1));
    }
}
