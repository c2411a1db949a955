package org.benchleaf.content;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.rule.RuleArea;
import org.benchleaf.shared.rule.Ruling;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.Shipment;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.stock.Availability;
import org.benchleaf.shared.stock.ContainerNaming;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// Values put into the words of one language.
///
/// Words lie in `wording/*_LANGUAGE.properties`, UTF-8; `{name}` stands for a value. A missing word is an
/// exception, never a key on paper. It is immutable and may be shared between threads.
public final class Wording {
    private final Words words;
    private final LengthStyle lengths;
    private final ContainerNaming containers;
    private final Telling telling;

    private Wording(Words words, LengthStyle lengths, ContainerNaming containers, Telling telling) {
        this.words = words;
        this.lengths = lengths;
        this.containers = containers;
        this.telling = telling;
    }

    /// @param language a language of the pack; only its language code counts
    /// @param lengths units of lengths
    /// @throws MissingContent when the pack lacks the language
    public static Wording open(ContentPack content, Locale language, LengthStyle lengths) {
        return open(content, language, lengths, ContainerNaming.NUMBER);
    }

    /// @param language a language of the pack; only its language code counts
    /// @param lengths units of lengths
    /// @param containers what the shop calls container classes
    /// @throws MissingContent when the pack lacks the language
    public static Wording open(ContentPack content, Locale language, LengthStyle lengths, ContainerNaming containers) {
        return new Wording(Words.read(content, language), lengths, containers, Telling.ALL);
    }

    /// The same words, telling less of what stands in stock.
    public Wording telling(Telling less) {
        return new Wording(words, lengths, containers, less);
    }

    /// How much of its stock is told.
    public Telling telling() {
        return telling;
    }

    /// Languages of which all words of paper are there: those that come with the program and those that a shop's own
    /// folder adds.
    public static List<String> paperLanguages(ContentPack content) {
        return Words.paperLanguages(content);
    }

    public Locale language() {
        return words.language();
    }

    Words words() {
        return words;
    }

    ContainerNaming containers() {
        return containers;
    }

    public LengthStyle lengths() {
        return lengths;
    }

    /// Every key of the language.
    public Set<String> keys() {
        return words.keys();
    }

    /// @throws MissingContent when there is no such word
    public String text(String key) {
        return words.text(key);
    }

    /// A sentence with values in the places of their names.
    ///
    /// @throws MissingContent when there is no such word, or it wants a value that is not given
    public String text(String key, Map<String, String> values) {
        return words.fill(key, text(key), values);
    }

    /// The sentence of a problem.
    public String problem(Problem problem) {
        return text("problem." + problem.key(), problem.details());
    }

    /// The word for a constant of a vocabulary: `full sun`.
    public String term(Enum<?> term) {
        return text("term." + term.getDeclaringClass().getSimpleName() + "." + term.name());
    }

    /// Words in the order of the vocabulary: `full sun, part sun`.
    public String terms(Collection<? extends Enum<?>> terms) {
        return String.join(
                text("list.comma"),
                terms.stream()
                        .sorted(java.util.Comparator.comparingInt(Enum::ordinal))
                        .map(this::term)
                        .toList());
    }

    /// `dogs, cats and horses`.
    public String listOf(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        String first = String.join(text("list.comma"), parts.subList(0, parts.size() - 1));
        return text("list.and", Map.of("first", first, "last", parts.getLast()));
    }

    /// `6–8 ft` in the units of this wording.
    public String length(LengthRange range) {
        return new Measures(this).units(lengths.write(range));
    }

    /// The words of a color: `deep red`. What is in no list of colors stays as it was written.
    public String color(PlantColor color) {
        return new PlantWords(this).color(color);
    }

    /// Colors in their order: `crimson, orange`.
    public String colors(Collection<PlantColor> colors) {
        return new PlantWords(this).colors(colors);
    }

    /// `Apr–May`; `all year` for all twelve.
    public String months(MonthSet months) {
        return new PlantWords(this).months(months);
    }

    /// Who took a photograph and under which license; empty for the shop's own.
    public String credit(String who, String license) {
        return new PlantWords(this).credit(who, license);
    }

    /// `$1,250.00`; `21.50 CAD` for a currency without a form of its own.
    public String money(Money money) {
        return new StockWords(this).money(money);
    }

    /// `12 April 2027`.
    public String date(LocalDate day) {
        return new DayWords(this).date(day);
    }

    /// `12 Apr`; with its year when that is another than the page's.
    ///
    /// @param year of the page
    public String shortDate(LocalDate day, int year) {
        return new DayWords(this).shortDate(day, year);
    }

    /// `12 April 2027, 07:30`.
    public String time(LocalDateTime moment) {
        return new DayWords(this).time(moment);
    }

    /// From when what is told of stock is, and whose prices are told when they are not the catalog's.
    public String stockAsOf(LocalDateTime moment) {
        String stock = text("stock.as-of", Map.of("when", time(moment)));
        return telling.tier()
                .map(tier -> text("stock.as-of.tier", Map.of("stock", stock, "tier", tier.name())))
                .orElse(stock);
    }

    /// `week of 5 April 2027`.
    public String week(YearWeek week) {
        return new DayWords(this).week(week);
    }

    /// The size as the shop writes it, with a dash for a span: `5–6 ft B&B`.
    public String size(StockSize size) {
        return new StockWords(this).size(size);
    }

    /// `120 now`, `60 from the week of 5 April 2027`, `sold out`.
    public String availability(Availability availability) {
        return new StockWords(this).availability(availability);
    }

    /// What comes to what is there: `60 more from the week of 5 April 2027`.
    public String more(YearWeek week, int count) {
        return new StockWords(this).more(week, count);
    }

    /// How long ago: `today`, `3 days ago`.
    public String age(LocalDate day, LocalDate today) {
        return new DayWords(this).age(day, today);
    }

    /// `Poisonous to dogs and horses: seeds poisonous if eaten`.
    public String caution(Caution caution) {
        return new PlantWords(this).caution(caution);
    }

    /// `full sun to part shade` for steps without a gap, else the words one by one.
    public String exposure(Set<Exposure> exposure) {
        return new PlantWords(this).exposure(exposure);
    }

    /// The first letter as a capital, for the start of a line.
    public String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(language()) + text.substring(1);
    }

    /// `#3` or `#7, tree form`.
    public String size(StockSize size, ItemForm form) {
        return new StockWords(this).size(size, form);
    }

    /// A size in a list of stock, which says where a caliper is taken: `2.5 in cal B&B, caliper at 6 in`.
    public String listedSize(StockSize size, ItemForm form) {
        return new StockWords(this).listedSize(size, form);
    }

    /// `1,200`.
    public String count(long count) {
        return new Measures(this).number("%,d", count);
    }

    /// What is asked, in a few words: `at most 5 ft tall`.
    public String wish(Wish wish) {
        return new WishWords(this).wish(wish);
    }

    /// A wish with how much it counts: `zone 6a (never given up)`.
    public String wish(WeighedWish wish) {
        String text = wish(wish.wish());
        if (wish.fixed()) {
            return text("answer.fixed", Map.of("wish", text));
        }
        if (wish.freed()) {
            return text("answer.freed", Map.of("wish", text));
        }
        if (wish.weight() > 1) {
            return text("answer.heavy", Map.of("wish", text));
        }
        return wish.weight() < 1 ? text("answer.light", Map.of("wish", text)) : text;
    }

    /// Why a plant fits or not, one short line: `grows to 6–8 ft, 1 ft over`.
    public String reason(Reason reason) {
        return new WishWords(this).reason(reason);
    }

    /// The verdict of the sale rules on a shipment, one line.
    public String verdict(SaleVerdict verdict) {
        return new SaleWords(this).verdict(verdict);
    }

    /// One rule and what it means for a shipment, one line, without its source.
    public String ruling(Ruling ruling, Shipment shipment) {
        return new SaleWords(this).ruling(ruling, shipment);
    }

    /// Where a rule holds: `Pennsylvania`, `Suffolk County, New York and Nassau County, New York`.
    public String area(RuleArea area) {
        return new SaleWords(this).area(area);
    }

    /// What is printed with every word on sale rules: how old the list is, and who decides.
    public String saleCaution(LocalDate compiledOn) {
        return text("rules.caution", Map.of("date", date(compiledOn)));
    }

    /// Who states what the reason rests on.
    public Optional<Source> sourceOf(Reason reason) {
        return switch (reason) {
            case Reason.Met met -> met.seen().source();
            case Reason.Missed missed -> missed.seen().source();
            case Reason.Unknown unknown -> Optional.empty();
        };
    }
}
