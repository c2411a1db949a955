package org.benchleaf.search;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.stock.StockSize;

/// Reads the made-up catalogs and needs of the benchmarks.
final class BenchFiles {
    private static final Map<String, String> TERMS = Map.ofEntries(
            Map.entry("sun", "full sun"),
            Map.entry("part", "part shade"),
            Map.entry("shade", "full shade"),
            Map.entry("semi", "semi-evergreen"),
            Map.entry("mounding", "mounded"),
            Map.entry("clumping", "clump"),
            Map.entry("prostrate", "mat"),
            Map.entry("street-tree", "street"),
            Map.entry("erosion", "slope"),
            Map.entry("pollinator", "pollinator garden"),
            Map.entry("pets", "toxic: dogs, cats"),
            Map.entry("humans", "toxic: people"),
            Map.entry("skin", "irritant: people"),
            Map.entry("1", "rarely"),
            Map.entry("2", "seldom"),
            Map.entry("3", "occasionally"),
            Map.entry("4", "frequently"),
            Map.entry("plug", "#SP1"),
            Map.entry("4in", "#SP3"),
            Map.entry("qt", "#SP4"),
            Map.entry("BB-1.5in", "1.5 in cal B&B"),
            Map.entry("BB-2in", "2 in cal B&B"),
            Map.entry("BB-3in", "3 in cal B&B"),
            Map.entry("flat-18", "#SP2"),
            Map.entry("bareroot", "18-24 in bare root"));

    private BenchFiles() {}

    static InMemoryCatalogView catalog(Path folder) throws IOException {
        InMemoryCatalogView catalog = new InMemoryCatalogView();
        try (Stream<String> lines = Files.lines(folder.resolve("items.csv"))) {
            lines.skip(1).map(line -> line.split(",", 29)).forEach(cells -> put(catalog, cells));
        }
        Map<Long, Set<String>> stocks = new HashMap<>();
        try (Stream<String> lines = Files.lines(folder.resolve("stock.csv"))) {
            lines.skip(1)
                    .map(line -> line.split(","))
                    .forEach(cells -> stocks.computeIfAbsent(Long.parseLong(cells[0]), none -> new LinkedHashSet<>())
                            .add("%s,%s,%s,%s".formatted(term(cells[1]), cells[2], cells[3], cells[4])));
        }
        stocks.forEach((serial, rows) -> catalog.put(Plants.stock(serial, rows.toArray(String[]::new))));
        return catalog;
    }

    private static void put(InMemoryCatalogView catalog, String[] cells) {
        List<String> pairs = new ArrayList<>();
        add(pairs, "life_form", cells[6]);
        add(pairs, "hardiness", cells[7] + "-" + cells[8]);
        add(pairs, "exposure", terms(cells[9]));
        add(pairs, "height", cells[10] + "-" + cells[11] + " ft");
        add(pairs, "spread", cells[12] + "-" + cells[13] + " ft");
        add(pairs, "bloom", cells[14].replace('|', ';'));
        add(pairs, "flower_color", terms(cells[16].replace("bicolor", "white")));
        add(pairs, "fall_color", cells[17]);
        add(pairs, "foliage_color", cells[18].replace("variegated", "cream"));
        add(pairs, "foliage", term(cells[19]));
        add(pairs, "native_states", cells[20].replace('|', ' '));
        add(pairs, "moisture", terms(cells[21]));
        add(pairs, "soil_texture", terms(cells[22].replaceAll("\\|?(acid|alkaline)", "")));
        add(pairs, "deer", term(cells[23]));
        add(pairs, "habit", term(cells[24]));
        add(pairs, "uses", terms(cells[25].replaceAll("\\|?rock-garden", "")));
        add(pairs, "cautions", cells[26].equals("none") ? "" : term(cells[26]));
        var species = Plants.name(cells[2], cells[3]);
        catalog.put(Plants.plant(
                Long.parseLong(cells[0]),
                cells[4].isEmpty() ? species : species.withCultivar(cells[4]),
                Plants.facts(pairs.toArray(String[]::new)),
                List.of(),
                List.of(cells[5])));
    }

    private static void add(List<String> pairs, String attribute, String text) {
        if (!text.isBlank()) {
            pairs.add(attribute);
            pairs.add(text);
        }
    }

    static List<Need> needs(Path csv) throws IOException {
        try (Stream<String> lines = Files.lines(csv)) {
            return lines.skip(1).map(line -> need(line.split(",", -1))).toList();
        }
    }

    private static Need need(String[] cells) {
        List<Wish> wishes = new ArrayList<>();
        given(cells[1])
                .ifPresent(text ->
                        wishes.add(new Wish.HardyIn(HardinessZone.read(text).orThrow())));
        given(cells[2])
                .ifPresent(text -> wishes.add(new Wish.GrowsIn(
                        only(Attributes.EXPOSURE.codec().read(term(text)).orThrow()))));
        given(cells[3]).ifPresent(text -> wishes.add(new Wish.AtLeastTall(cm(text))));
        given(cells[4]).ifPresent(text -> wishes.add(new Wish.NoTallerThan(cm(text))));
        given(cells[5]).ifPresent(text -> wishes.add(new Wish.NoWiderThan(cm(text))));
        Optional<MonthSet> bloom =
                given(cells[6]).map(text -> MonthSet.read(text).orThrow());
        Optional<ColorFamily> color = given(cells[8]).flatMap(ColorFamily::ofWord);
        if (bloom.isPresent() || color.isPresent()) {
            wishes.add(new Wish.Shows(Season.FLOWER, bloom, color));
        }
        given(cells[9])
                .ifPresent(text ->
                        wishes.add(new Wish.Shows(Season.FALL_COLOR, Optional.empty(), ColorFamily.ofWord(text))));
        given(cells[10])
                .ifPresent(text -> wishes.add(new Wish.OfFoliage(
                        Set.of(Attributes.FOLIAGE.codec().read(term(text)).orThrow()))));
        given(cells[11])
                .ifPresent(text -> wishes.add(
                        new Wish.NativeTo(Optional.of(Region.read(text).orThrow()))));
        given(cells[12])
                .ifPresent(text -> wishes.add(new Wish.LikesSoil(
                        only(Attributes.MOISTURE.codec().read(text).orThrow()))));
        given(cells[14]).ifPresent(text -> wishes.add(new Wish.LeftAloneBy(Wish.Browser.DEER)));
        given(cells[15])
                .ifPresent(text -> wishes.add(new Wish.OfHabit(
                        Attributes.HABIT.codec().read(term(text)).orThrow())));
        given(cells[16])
                .flatMap(text -> Attributes.USES.codec().read(term(text)).toOptional())
                .ifPresent(uses -> wishes.add(new Wish.ServesAs(only(uses))));
        given(cells[17]).ifPresent(text -> wishes.add(new Wish.SafeFor(Creature.DOGS)));
        given(cells[18])
                .ifPresent(text -> wishes.add(
                        new Wish.OfForm(Attributes.LIFE_FORM.codec().read(text).orThrow())));
        given(cells[19])
                .ifPresent(text -> wishes.add(new Wish.InStock(
                        Integer.parseInt(cells[20]),
                        StockSize.read(term(text)).toOptional(),
                        Optional.<YearWeek>empty())));
        given(cells[21]).ifPresent(text -> wishes.add(new Wish.AtMostPrice(Money.usDollars(text))));
        return Need.of(wishes.toArray(Wish[]::new));
    }

    private static int cm(String feet) {
        return (int) Math.round(Double.parseDouble(feet) * 30.48);
    }

    private static Optional<String> given(String cell) {
        return cell.isBlank() ? Optional.empty() : Optional.of(cell);
    }

    private static <T> T only(Set<T> set) {
        return set.iterator().next();
    }

    private static String term(String word) {
        return TERMS.getOrDefault(word, word);
    }

    private static String terms(String words) {
        return Arrays.stream(words.split("\\|")).map(BenchFiles::term).collect(Collectors.joining("; "));
    }
}
