package org.benchleaf.catalog.names;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Words of goods after a name, as lists write them into the same cell: sizes, prices, roots. Taken off the end
/// one by one; never what stands in quotes that belong to the name.
final class GoodsWords {
    private static final Pattern LEADING = Pattern.compile("^[ ,;]+");
    private static final String NUMBER = "[0-9]{1,3}(?:[.,/][0-9]{1,2})?";
    private static final String SPAN = NUMBER + "(?: ?(?:-|–|to|x) ?" + NUMBER + ")?";
    private static final String CONTAINER =
            "(?:gal|gals|gallon|gallons|g|qt|quart|pt|pint|cm|l|ltr|lt|liter|litre)\\.?(?: ?(?:pot|cont|container)\\.?)?";
    private static final String LENGTH = "(?:in|inch|inches|ft|feet|foot|cm|m|\"|”|″|'|’|′)\\.?";
    private static final String HOW_MEASURED = "(?: ?(?:cal|caliper|tall|high|ht|hgt|spread|spr)\\.?)?";

    /// What may end the text; each begins at a blank, a comma or a bracket.
    private static final List<Pattern> ENDS = List.of(
            end("#(?:SP)?[0-9]{1,3}(?:\\.[0-9])?"),
            end(SPAN + " ?-?" + CONTAINER),
            end(SPAN + " ?" + LENGTH + HOW_MEASURED),
            end(NUMBER + "(?:\"|”|″)? ?(?:cal|caliper)\\.?"),
            end("(?:US)?[$€£] ?[0-9]{1,5}(?:[.,][0-9]{2})?(?: ?/? ?(?:ea|each)\\.?)?"),
            end("[0-9]{1,5}[.,][0-9]{2}(?: ?/? ?(?:ea|each)\\.?)?"),
            end("(?:B ?& ?B|BNB|bare ?root)"));

    private final String name;
    private final String goods;

    private GoodsWords(String name, String goods) {
        this.name = name;
        this.goods = goods;
    }

    /// Parts a text into name and goods. At least one word stays for the name.
    static GoodsWords of(String text) {
        String name = text.strip();
        String goods = "";
        for (Optional<Matcher> found = ending(name); found.isPresent(); found = ending(name)) {
            int from = found.get().start();
            goods = (LEADING.matcher(name.substring(from)).replaceFirst("").strip() + " " + goods).strip();
            name = withoutComma(name.substring(0, from));
        }
        return new GoodsWords(name, goods);
    }

    String name() {
        return name;
    }

    /// What was taken off, as written; empty when there was nothing.
    String goods() {
        return goods;
    }

    /// Begins with the first of several blanks and commas and gives none of them back: a run of commas is gone through
    /// once, not from each of its commas.
    private static Pattern end(String goods) {
        return Pattern.compile("(?i)(?<=[^\\s,])(?:[ ,]++" + goods + "|[ ,]*+\\( ?" + goods + " ?\\))[ ,;.]*+$");
    }

    /// The last words of goods in a text, where they begin.
    static Optional<Matcher> ending(CharSequence text) {
        return ENDS.stream()
                .map(pattern -> pattern.matcher(text))
                .filter(Matcher::find)
                .filter(matcher -> isOutsideQuotes(text, matcher.start()))
                .findFirst();
    }

    /// `'No. 5'` and `"24"` are epithets: the quote that ends them was opened before. A quote behind a number that
    /// closes nothing is a unit.
    private static boolean isOutsideQuotes(CharSequence text, int from) {
        boolean open = false;
        for (int at = 0; at < from; at++) {
            if (!Quotes.isQuote(text.charAt(at))) {
                continue;
            }
            boolean opens = !open && (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1)));
            boolean closes = open && !Character.isLetterOrDigit(text.charAt(at + 1));
            open = opens || open && !closes;
        }
        return !open;
    }

    private static String withoutComma(String name) {
        String bare = name.strip();
        while (bare.endsWith(",") || bare.endsWith(";") || bare.endsWith("-") || bare.endsWith("–")) {
            bare = bare.substring(0, bare.length() - 1).strip();
        }
        return bare;
    }
}
