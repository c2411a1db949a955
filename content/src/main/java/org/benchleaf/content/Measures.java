package org.benchleaf.content;

import java.util.Locale;
import java.util.regex.Pattern;
import org.benchleaf.shared.stock.RootPackage;
import org.benchleaf.shared.stock.StockSize;

/// Numbers, units and sizes as a language writes them. The values bring English marks along, which are put into the
/// language's own here.
final class Measures {
    private static final Pattern DECIMAL = Pattern.compile("(?<=\\d)\\.(?=\\d)");
    private static final Pattern SPAN = Pattern.compile("(?<=\\d)-(?=\\d)");

    private final Wording words;

    Measures(Wording words) {
        this.words = words;
    }

    /// Grouped as the country does whose customers read the language. A thin space that few fonts have becomes a usual
    /// one that does not break.
    String number(String format, Number number) {
        return String.format(locale(), format, number).replace('\u202F', '\u00A0');
    }

    private Locale locale() {
        return Locale.forLanguageTag(words.text("number.locale"));
    }

    /// `1,5–2 m` of `1.5–2 m`, `3–5 pi` of `3–5 ft`.
    String units(String length) {
        char point = java.text.DecimalFormatSymbols.getInstance(locale()).getDecimalSeparator();
        return unit(unit(DECIMAL.matcher(length).replaceAll(String.valueOf(point)), "ft"), "in");
    }

    private String unit(String text, String unit) {
        return text.replaceAll("(?<=\\d )" + unit + "\\b", words.text("unit." + unit));
    }

    /// A size of the trade: marks such as `#3` stay, units and roots are said in words.
    String size(String text, StockSize size) {
        String spans = SPAN.matcher(text).replaceAll("–");
        return switch (size) {
            case StockSize.Container container -> unit(spans, "gal");
            case StockSize.MetricPot pot -> spans;
            case StockSize.Caliper caliper -> roots(units(spans).replace(" cal ", " " + words.text("unit.cal") + " "));
            case StockSize.Height height -> roots(units(spans));
            case StockSize.Spread spread ->
                roots(units(spans).replace(" spread ", " " + words.text("unit.spread") + " "));
        };
    }

    private String roots(String text) {
        for (RootPackage roots : RootPackage.values()) {
            if (text.endsWith(" " + roots.term())) {
                return text.substring(0, text.length() - roots.term().length()) + words.term(roots);
            }
        }
        return text;
    }
}
