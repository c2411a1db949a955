package org.benchleaf.content;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
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
    /// What customers read on paper; a language has all of it or is none of ours.
    private static final List<String> ON_PAPER = List.of("terms", "colors", "sheet", "documents");

    /// What the shop itself reads; English where nobody has put it into a language yet.
    private static final List<String> ON_SCREEN = List.of(
            "problems",
            "wishes",
            "web",
            "catalog",
            "app",
            "rules",
            "stock",
            "substitutes",
            "lists",
            "walk",
            "desk",
            "print",
            "jobs",
            "shop");

    private final Locale language;
    private final LengthStyle lengths;
    private final ContainerNaming containers;
    private final Telling telling;
    private final Map<String, String> words;

    private Wording(
            Locale language,
            LengthStyle lengths,
            ContainerNaming containers,
            Telling telling,
            Map<String, String> words) {
        this.telling = telling;
        this.containers = containers;
        this.language = language;
        this.lengths = lengths;
        this.words = Map.copyOf(words);
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
        Map<String, String> words = new HashMap<>();
        for (String file : ON_SCREEN) {
            String own = key(file, language);
            read(content.text(content.find(own).isPresent() ? own : key(file, Locale.ENGLISH)), words);
        }
        for (String file : ON_PAPER) {
            read(content.text(key(file, language)), words);
        }
        return new Wording(language, lengths, containers, Telling.ALL, words);
    }

    /// The same words, telling less of what stands in stock.
    public Wording telling(Telling less) {
        return new Wording(language, lengths, containers, less, words);
    }

    /// How much of its stock is told.
    public Telling telling() {
        return telling;
    }

    /// Languages of which all words of paper are there: those that come with the program and those that a shop's own
    /// folder adds.
    public static List<String> paperLanguages(ContentPack content) {
        return Stream.of(Locale.getISOLanguages())
                .filter(language -> ON_PAPER.stream()
                        .allMatch(file ->
                                content.find(key(file, Locale.of(language))).isPresent()))
                .toList();
    }

    private static String key(String file, Locale language) {
        return "wording/" + file + "_" + language.getLanguage() + ".properties";
    }

    private static void read(String text, Map<String, String> words) {
        Properties read = new Properties();
        try {
            read.load(new StringReader(text));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        read.stringPropertyNames().forEach(name -> words.put(name, read.getProperty(name)));
    }

    public Locale language() {
        return language;
    }

    public LengthStyle lengths() {
        return lengths;
    }

    /// Every key of the language.
    public Set<String> keys() {
        return words.keySet();
    }

    /// @throws MissingContent when there is no such word
    public String text(String key) {
        String text = words.get(key);
        if (text == null) {
            throw new MissingContent("word " + key, "the " + language.getLanguage() + " wording");
        }
        return text;
    }

    /// A sentence with values in the places of their names.
    ///
    /// @throws MissingContent when there is no such word, or it wants a value that is not given
    public String text(String key, Map<String, String> values) {
        return fill(key, text(key), values);
    }

    private String fill(String key, String pattern, Map<String, String> values) {
        StringBuilder filled = new StringBuilder();
        int from = 0;
        for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', from)) {
            int close = pattern.indexOf('}', open);
            if (close < 0) {
                break;
            }
            String name = pattern.substring(open + 1, close);
            String value = values.get(name);
            if (value == null) {
                throw new MissingContent("value {" + name + "} of word " + key, "what was given to be worded");
            }
            filled.append(pattern, from, open).append(value);
            from = close + 1;
        }
        return filled.append(pattern.substring(from)).toString();
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
        String key = color.word().replace(' ', '-');
        String whole = words.get("color." + key);
        int shade = key.indexOf('-');
        if (whole == null && shade > 0) {
            String plain = words.get("color." + key.substring(shade + 1));
            String pattern = words.get("shade." + key.substring(0, shade));
            return plain == null || pattern == null
                    ? color.word()
                    : fill("shade." + key, pattern, Map.of("color", plain));
        }
        return whole == null ? color.word() : whole;
    }

    /// Colors in their order: `crimson, orange`.
    public String colors(Collection<PlantColor> colors) {
        return colors.stream().map(this::color).collect(Collectors.joining(text("list.comma")));
    }

    /// `Apr–May`; `all year` for all twelve.
    public String months(MonthSet months) {
        return months.equals(MonthSet.ALL)
                ? text("months.all")
                : String.join(
                        text("list.comma"),
                        months.runs().stream()
                                .map(run -> run.getFirst() == run.getLast()
                                        ? text("month." + run.getFirst().name())
                                        : text("month." + run.getFirst().name()) + "–"
                                                + text("month." + run.getLast().name()))
                                .toList());
    }

    /// Who took a photograph and under which license; empty for the shop's own.
    public String credit(String who, String license) {
        String credit =
                Stream.of(who, license).filter(part -> !part.isBlank()).collect(Collectors.joining(text("list.comma")));
        return credit.isEmpty() ? "" : text("photo.credit", Map.of("credit", credit));
    }

    /// `$1,250.00`; `21.50 CAD` for a currency without a form of its own.
    public String money(Money money) {
        String amount = new Measures(this)
                .number(
                        "%,." + money.currency().getDefaultFractionDigits() + "f",
                        new java.math.BigDecimal(money.amount()));
        String code = money.currency().getCurrencyCode();
        String pattern = words.getOrDefault("money." + code, text("money.other"));
        return fill("money." + code, pattern, Map.of("amount", amount, "currency", code));
    }

    /// `12 April 2027`.
    public String date(LocalDate day) {
        return DateTimeFormatter.ofPattern(text("date.pattern"), language).format(day);
    }

    /// `12 Apr`; with its year when that is another than the page's.
    ///
    /// @param year of the page
    public String shortDate(LocalDate day, int year) {
        String key = day.getYear() == year ? "date.short" : "date.short.year";
        return text(
                key,
                Map.of(
                        "day", Integer.toString(day.getDayOfMonth()),
                        "month", text("month." + day.getMonth().name()),
                        "year", Integer.toString(day.getYear())));
    }

    /// `12 April 2027, 07:30`.
    public String time(LocalDateTime moment) {
        return DateTimeFormatter.ofPattern(text("time.pattern"), language).format(moment);
    }

    /// `week of 5 April 2027`.
    public String week(YearWeek week) {
        return text("week", Map.of("monday", date(week.monday())));
    }

    /// The size as the shop writes it, with a dash for a span: `5–6 ft B&B`.
    public String size(StockSize size) {
        return new Measures(this).size(containers.text(size), size);
    }

    /// `120 now`, `60 from the week of 5 April 2027`, `sold out`.
    public String availability(Availability availability) {
        return switch (availability) {
            case Availability.InStock(int count) ->
                text("stock.now" + telling.key(count), Map.of("count", count(count)));
            case Availability.From(YearWeek week, int count) ->
                text("stock.from" + telling.key(count), Map.of("count", count(count), "week", week(week)));
            case Availability.SoldOut() -> text("stock.sold-out");
            case Availability.Withdrawn() -> text("stock.withdrawn");
        };
    }

    /// What comes to what is there: `60 more from the week of 5 April 2027`.
    public String more(YearWeek week, int count) {
        return text("stock.more" + telling.key(count), Map.of("count", count(count), "week", week(week)));
    }

    /// How long ago: `today`, `3 days ago`.
    public String age(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(day, today);
        if (days < 0) {
            return text("age.future");
        }
        return days == 0
                ? text("age.today")
                : days == 1 ? text("age.yesterday") : text("age.days", Map.of("days", count((int) days)));
    }

    /// `Poisonous to dogs and horses: seeds poisonous if eaten`.
    public String caution(Caution caution) {
        String whom = listOf(caution.whom().stream().map(this::term).toList());
        String what = text("caution." + caution.hazard().name(), Map.of("whom", whom));
        return caution.how().isEmpty() ? what : text("caution.how", Map.of("what", what, "how", caution.how()));
    }

    /// `full sun to part shade` for steps without a gap, else the words one by one.
    public String exposure(Set<Exposure> exposure) {
        List<Exposure> steps = exposure.stream().sorted().toList();
        if (steps.size() > 1 && steps.getLast().stepsTo(steps.getFirst()) == steps.size() - 1) {
            return text("exposure.range", Map.of("from", term(steps.getFirst()), "to", term(steps.getLast())));
        }
        return terms(steps);
    }

    /// The first letter as a capital, for the start of a line.
    public String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(language) + text.substring(1);
    }

    /// `#3` or `#7, tree form`.
    public String size(StockSize size, ItemForm form) {
        return form == ItemForm.REGULAR
                ? size(size)
                : text("size.form", Map.of("size", size(size), "form", term(form)));
    }

    /// A size in a list of stock, which says where a caliper is taken: `2.5 in cal B&B, caliper at 6 in`.
    public String listedSize(StockSize size, ItemForm form) {
        String plain = size(size, form);
        return size instanceof StockSize.Caliper caliper
                ? text("size.caliper", Map.of("size", plain, "inches", Integer.toString(caliper.measuredAtInches())))
                : plain;
    }

    /// `1,200`.
    public String count(long count) {
        return new Measures(this).number("%,d", count);
    }

    /// What is asked, in a few words: `at most 5 ft tall`.
    public String wish(Wish wish) {
        return new WishWords(this).wish(wish);
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
