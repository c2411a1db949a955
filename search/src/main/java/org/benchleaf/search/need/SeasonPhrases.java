package org.benchleaf.search.need;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;

/// `white flowers in June`, `red or orange fall color`, `summer blooms`, `red stems in winter`, `blue foliage`:
/// what a plant is looked at for. A color alone is the color of flowers.
final class SeasonPhrases implements PhraseReader {
    private final Vocabulary words;
    private final Pattern pattern;
    private final Pattern colorAlone;
    private final boolean colorsAfter;

    SeasonPhrases(Vocabulary words) {
        this.words = words;
        String shades = "(?:" + words.any("shades") + "\\s+){0,3}";
        String color = words.any("colors");
        String colors = shades + "(?<color>" + color + ")(?:\\s*(?:,|/|" + words.any("and") + ")\\s*" + shades
                + "(?<color2>" + color + "))?";
        String month = words.any("months");
        String before = "(?:(?<months>" + month + ")\\s+)?(?:" + colors + "\\s+|" + shades + ")?(?:(?<between>" + month
                + ")\\s+)?";
        String after = "(?:\\s*(?:" + words.any("during") + "\\s+)?(?:the\\s+)?(?<from>" + month + ")(?:\\s*(?:-|\\s|"
                + words.any("through") + "|" + words.any("and") + ")\\s*(?<to>" + month + "))?)?";
        colorsAfter = words.puts("colors after");
        String behind = "(?:\\s+" + colors.replace("<color", "<behind") + ")?";
        pattern = Pattern.compile(
                before + "(?<season>" + words.any("seasons") + ")" + (colorsAfter ? behind : "") + after);
        colorAlone = Pattern.compile(colors + after);
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        Optional<Matcher> found = sentence.match(pattern, at);
        if (found.isPresent()) {
            Matcher match = found.get();
            // "fall foliage" with a color before it: the season's name is part of what is shown, not a month
            Optional<Season> named = Optional.ofNullable(match.group("between"))
                    .or(() -> Optional.ofNullable(match.group("months")))
                    .flatMap(month -> words.meaning("seasons", clean(month + " " + match.group("season"))))
                    .flatMap(text -> Term.read(Season.class, text).toOptional());
            if (named.isPresent()) {
                return Optional.of(taken(match, named.get(), Optional.empty()));
            }
            return words.meaning("seasons", clean(match.group("season")))
                    .flatMap(text -> Term.read(Season.class, text).toOptional())
                    .map(season -> taken(match, season, months(match, "months").or(() -> months(match, "between"))));
        }
        return sentence.match(colorAlone, at)
                .filter(match -> !beginsAName(sentence, match))
                .map(match -> taken(match, Season.FLOWER, Optional.empty())
                        .with(new Note(
                                "color-of-flowers", sentence.words(at, match.end()), clean(match.group("color")))));
    }

    /// `red maple`, `blue spruce`: the color belongs to a name, not to flowers. Pink is in no name but of what
    /// flowers so.
    private boolean beginsAName(Sentence sentence, Matcher match) {
        return !color(match, "color").equals(Optional.of(ColorFamily.PINK))
                && sentence.phrase(words, "genera", sentence.skipBlanks(match.end()))
                        .isPresent();
    }

    private Taken taken(Matcher match, Season season, Optional<MonthSet> before) {
        Optional<MonthSet> months = after(match).or(() -> before);
        List<Wish> wishes = new ArrayList<>();
        color(match, "color").ifPresent(color -> wishes.add(new Wish.Shows(season, months, Optional.of(color))));
        color(match, "color2").ifPresent(color -> wishes.add(new Wish.Shows(season, months, Optional.of(color))));
        // `flores blancas`; a pattern of colors alone has no season to stand behind
        if (colorsAfter && match.pattern() == pattern) {
            color(match, "behind").ifPresent(color -> wishes.add(new Wish.Shows(season, months, Optional.of(color))));
            color(match, "behind2").ifPresent(color -> wishes.add(new Wish.Shows(season, months, Optional.of(color))));
        }
        if (wishes.isEmpty()) {
            wishes.add(new Wish.Shows(season, months, Optional.empty()));
        }
        return Taken.of(match.end(), wishes).weighing(1.0 / wishes.size());
    }

    private Optional<MonthSet> after(Matcher match) {
        Optional<MonthSet> from = months(match, "from");
        Optional<MonthSet> to = months(match, "to");
        if (from.isEmpty() || to.isEmpty()) {
            return from;
        }
        Month first = from.get().runs().getFirst().getFirst();
        Month last = to.get().runs().getFirst().getLast();
        return Optional.of(MonthSet.between(first, last));
    }

    private Optional<MonthSet> months(Matcher match, String group) {
        return Optional.ofNullable(match.group(group))
                .flatMap(name -> words.meaning("months", clean(name)))
                .flatMap(text -> MonthSet.read(text).toOptional());
    }

    private Optional<ColorFamily> color(Matcher match, String group) {
        return Optional.ofNullable(match.group(group))
                .flatMap(name -> words.meaning("colors", clean(name)))
                .flatMap(text -> Term.read(ColorFamily.class, text).toOptional());
    }

    private static String clean(String phrase) {
        return phrase.replaceAll("\\s+", " ");
    }
}
