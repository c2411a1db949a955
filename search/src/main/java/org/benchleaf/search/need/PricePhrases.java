package org.benchleaf.search.need;

import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.need.Wish;

/// `under $35`, `$35 each`, `up to 20 dollars`: the most to be paid a piece, in US dollars.
final class PricePhrases implements PhraseReader {
    private final Pattern pattern;

    PricePhrases(Vocabulary words) {
        String amount = "(\\d{1,3}(?:,\\d{3})+|\\d{1,6})(\\.\\d{2})?";
        pattern = Pattern.compile("(?:" + words.any("at most") + "\\s*)?(?:\\$\\s?" + amount + "|" + amount + "\\s?"
                + words.any("dollars") + ")(?:\\s*" + words.any("each") + "){0,2}");
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        return sentence.match(pattern, at).map(match -> {
            int group = match.group(1) != null ? 1 : 3;
            String cents = match.group(group + 1) == null ? "" : match.group(group + 1);
            Money price = Money.usDollars(match.group(group).replace(",", "") + cents);
            return Taken.of(match.end(), new Wish.AtMostPrice(price));
        });
    }
}
