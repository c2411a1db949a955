package org.benchleaf.catalog.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.fact.Source;

/// Proposes what the columns of an unknown file mean, by their headings alone; a person checks and saves it.
///
/// Which headings growers and reference lists use is common practice, no source.
public final class MapProposal {
    private static final Pattern UNIT =
            Pattern.compile("(.*?)[ _(]+(ft|feet|in|inches|cm|m|metres|meters)\\)?", Pattern.CASE_INSENSITIVE);
    private static final Map<String, String> PLANT_WORDS = words("""
        name: botanical name, scientific name, latin name, latin, botanical, plant, plant name, taxon, species, variety, item name
        common_names: common name, common, english name, vernacular name
        synonyms: synonym, old name, formerly
        hardiness: zone, zones, usda zone, usda zones, hardiness zone, hardiness zones, cold hardiness
        heat_zone: heat zones, ahs zone, ahs heat zone
        height: ht, mature height, height at maturity, plant height, max height
        spread: width, wd, mature width, mature spread, plant width
        height_10yr: height 10 years, ten year height, height at 10 years
        spread_10yr: width 10 years, ten year width, ten year spread
        exposure: light, sun, sun exposure, light requirement, sunlight
        moisture: soil moisture, water
        water_need: water use, water needs, moisture use
        flower_color: bloom color, flower colour, flowers, flower
        bloom: bloom time, bloom months, flowering time, bloom period, flowering months
        fall_color: autumn color, fall colour, fall foliage
        fruit_color: berry color, fruit colour
        foliage_color: leaf color, foliage colour
        foliage: leaf retention, foliage type
        life_form: type, plant type, growth habit
        habit: form, shape
        growth_rate: growth, rate of growth
        soil_ph: ph, ph range
        soil_texture: soil, soil type
        deer: deer resistance, deer rating
        rabbit: rabbit resistance
        native_states: native to, states, native range states
        cautions: caution, toxicity, warnings
        uses: landscape uses, landscape use, use
        rights: patent, plant patent
        selling_note: sales note, note
        description: notes, remarks, comments
        key: plant key
        """);
    private static final Map<String, String> STOCK_WORDS = words("""
        name: botanical name, scientific name, latin name, botanical, plant, plant name, taxon, item name, description
        lot: lot number, lot no, lot id, batch, crop id
        size: container, container size, pot, pot size, unit size
        form: style, shape
        place: location, bay, block, row, bed, house, loc
        count: qty, quantity, available, avail, on hand, availability, number
        ready_week: ready, ready date, ship week, week ready
        price: unit price, wholesale, wholesale price, each, net price
        condition: remarks, notes, comments, quality, look
        seen_on: walked, date, walk date, updated
        gtin: upc, ean, barcode, upc code
        key: plant key
        """);

    /// What stands under a heading that spans two columns.
    private static final Set<String> SPAN_ENDS =
            Set.of("min", "max", "from", "to", "low", "high", "start", "end", "color", "months", "zone", "time");

    private MapProposal() {}

    /// @param id a name for the map
    /// @param headings the file's headings
    /// @param source who states what the file says
    public static ColumnMap of(String id, List<String> headings, Source source) {
        RowKind rows = looksLikeStock(headings) ? RowKind.STOCK : RowKind.PLANTS;
        List<Column> columns = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (String heading : headings) {
            column(rows, heading).filter(column -> taken.add(column.field())).ifPresent(columns::add);
        }
        return new ColumnMap(id, rows, ImportPlan.Rank.REFERENCE, Optional.of(source), columns, Set.of());
    }

    /// The same with the contents of the first rows: they say what columns are whose headings say nothing, and where
    /// lengths lack a unit.
    ///
    /// @param sample rows, each with a cell for every heading
    public static ColumnMap of(String id, List<String> headings, List<List<String>> sample, Source source) {
        List<List<String>> cells = new ArrayList<>();
        for (int column = 0; column < headings.size(); column++) {
            int at = column;
            cells.add(sample.stream().map(row -> row.get(at)).toList());
        }
        RowKind rows = looksLikeStock(headings) || !namesPlants(headings) && ContentGuess.looksLikeStock(cells)
                ? RowKind.STOCK
                : RowKind.PLANTS;
        Map<Integer, Column> found = new TreeMap<>();
        Set<String> taken = new HashSet<>();
        for (int column = 0; column < headings.size(); column++) {
            int at = column;
            column(rows, headings.get(column))
                    .filter(each -> taken.add(each.field()))
                    .map(each -> withUnit(each, cells.get(at)))
                    .ifPresent(each -> found.put(at, each));
        }
        for (int column = 0; column < headings.size(); column++) {
            String heading = headings.get(column);
            if (!found.containsKey(column) && !heading.isEmpty()) {
                int at = column;
                ContentGuess.field(rows, cells.get(column), taken)
                        .filter(taken::add)
                        .ifPresent(field -> found.put(at, withUnit(Column.of(heading, field), cells.get(at))));
            }
        }
        return new ColumnMap(
                id, rows, ImportPlan.Rank.REFERENCE, Optional.of(source), List.copyOf(found.values()), Set.of());
    }

    private static Column withUnit(Column column, List<String> cells) {
        boolean length = column.field().startsWith("height") || column.field().startsWith("spread");
        if (!length || column.unit().isPresent() || !ContentGuess.areBareNumbers(cells)) {
            return column;
        }
        return new Column(
                column.headings(),
                column.field(),
                column.required(),
                Optional.of("ft"),
                column.language(),
                column.join(),
                column.words(),
                column.cases(),
                column.everyCase(),
                "the file gives no unit; feet were taken");
    }

    private static boolean namesPlants(List<String> headings) {
        return headings.stream()
                .flatMap(heading -> column(RowKind.PLANTS, heading).stream())
                .anyMatch(column -> Attributes.byId(column.field()).isPresent());
    }

    /// Whether a text is a heading of some list.
    static boolean isHeading(String text) {
        return column(RowKind.PLANTS, text).isPresent()
                || column(RowKind.STOCK, text).isPresent()
                || SPAN_ENDS.contains(Headings.folded(text));
    }

    private static boolean looksLikeStock(List<String> headings) {
        Set<String> fields = new HashSet<>();
        headings.forEach(heading -> field(RowKind.STOCK, heading).ifPresent(fields::add));
        return fields.contains(Fields.COUNT) && (fields.contains(Fields.SIZE) || fields.contains(Fields.PRICE));
    }

    private static Optional<Column> column(RowKind rows, String heading) {
        Optional<String> whole = field(rows, heading);
        if (whole.isPresent()) {
            return whole.map(field -> Column.of(heading, field));
        }
        Matcher unit = UNIT.matcher(heading.strip());
        if (!unit.matches()) {
            return Optional.empty();
        }
        return field(rows, unit.group(1))
                .filter(field -> field.startsWith("height") || field.startsWith("spread"))
                .map(field -> Column.of(heading, field).withUnit(unit(unit.group(2))));
    }

    private static String unit(String written) {
        return switch (written.toLowerCase(Locale.ROOT)) {
            case "ft", "feet" -> "ft";
            case "in", "inches" -> "in";
            case "cm" -> "cm";
            default -> "m";
        };
    }

    private static Optional<String> field(RowKind rows, String heading) {
        String folded = Headings.folded(heading);
        boolean own = Fields.isKnown(rows, folded)
                || rows == RowKind.PLANTS && Attributes.byId(folded).isPresent();
        return own
                ? Optional.of(folded)
                : Optional.ofNullable((rows == RowKind.PLANTS ? PLANT_WORDS : STOCK_WORDS).get(folded));
    }

    private static Map<String, String> words(String table) {
        Map<String, String> fieldByHeading = new HashMap<>();
        table.strip().lines().forEach(line -> {
            String[] parts = line.split(":", 2);
            for (String heading : parts[1].split(",")) {
                fieldByHeading.put(Headings.folded(heading), parts[0].strip());
            }
        });
        return Map.copyOf(fieldByHeading);
    }
}
