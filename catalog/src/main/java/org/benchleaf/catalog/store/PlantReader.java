package org.benchleaf.catalog.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.catalog.rules.SaleRuleBook;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.rule.PlantRules;

/// Puts plants together from their rows, three queries for any number of them, with what they inherit.
final class PlantReader {
    /// A cultivar inherits from its taxon, and a taxon below species from its species: two levels and no
    /// more.
    private static final String PLANTS = "SELECT p.*, t.serial AS taxon_serial, t.plant_key AS taxon_key,"
            + " s.serial AS above_serial FROM plant p LEFT JOIN plant t ON t.name = p.taxon_name AND t.withdrawn = 0"
            + " LEFT JOIN plant s ON s.name = t.taxon_name AND s.withdrawn = 0"
            + " WHERE p.withdrawn = 0 AND p.plant_key IN (<keys>)";

    private static final String NAMES = "SELECT plant, kind, language, text, source FROM plant_name"
            + " WHERE plant IN (<keys>) ORDER BY plant, kind, language, name_rank DESC, place, text, source";

    private final FactReader facts;
    private final Sources sources;
    private final Memo<Locale> languages = new Memo<>(Locale::forLanguageTag);
    private final RuleShelf rules;

    PlantReader(Dialect dialect, RuleShelf rules) {
        this.rules = rules;
        this.sources = new Sources();
        this.facts = new FactReader(dialect, new FactValues(), sources);
    }

    private record Row(
            int serial,
            PlantKey key,
            BotanicalName name,
            Optional<Integer> taxon,
            Optional<PlantKey> taxonKey,
            Optional<Integer> above,
            boolean retired) {}

    private static final class Names {
        private final List<CommonName> common = new ArrayList<>();
        private final List<Synonym> synonyms = new ArrayList<>();
        private final Set<String> seen = new HashSet<>();
    }

    /// The plants with these keys that exist, in the order asked.
    Map<PlantKey, PlantRecord> read(Session session, Collection<PlantKey> keys) throws SQLException {
        Map<PlantKey, Row> rows = rows(session, keys);
        Set<Integer> asked = new HashSet<>();
        Set<Integer> withTaxa = new HashSet<>();
        for (Row row : rows.values()) {
            asked.add(row.serial());
            withTaxa.add(row.serial());
            row.taxon().ifPresent(withTaxa::add);
            row.above().ifPresent(withTaxa::add);
        }
        SaleRuleBook book = rules.book(session);
        Map<Integer, Names> names = names(session, book.isEmpty() ? asked : withTaxa);
        Map<Integer, FactReader.Shelf> shelves = facts.read(session, withTaxa);
        Map<Integer, Facts> inherited = new HashMap<>(); // cultivars of one taxon share what it gives them
        Map<PlantKey, PlantRecord> plants = new LinkedHashMap<>();
        for (PlantKey key : keys) {
            Row row = rows.get(key);
            if (row != null) {
                plants.put(key, withRules(plant(row, names, shelves, inherited), row, names, book));
            }
        }
        return plants;
    }

    private static PlantRecord plant(
            Row row, Map<Integer, Names> names, Map<Integer, FactReader.Shelf> facts, Map<Integer, Facts> inherited) {
        Names own = names.getOrDefault(row.serial(), new Names());
        FactReader.Shelf shelf = facts.getOrDefault(row.serial(), FactReader.Shelf.EMPTY);
        Facts chosen = Facts.of(shelf.chosen());
        if (row.taxon().isPresent()) {
            int taxon = row.taxon().get();
            Facts given = inherited.get(taxon);
            if (given == null) {
                given = chosen(facts, taxon);
                if (row.above().isPresent()) {
                    given = given.inheriting(chosen(facts, row.above().get()));
                }
                inherited.put(taxon, given);
            }
            chosen = chosen.inheriting(given);
        }
        return new PlantRecord(
                row.key(), row.name(), row.taxonKey(), own.common, own.synonyms, chosen, shelf.others(), row.retired());
    }

    /// A rule that names a synonym of its species takes in a cultivar too.
    private static PlantRecord withRules(PlantRecord plant, Row row, Map<Integer, Names> names, SaleRuleBook book) {
        List<String> synonyms = new ArrayList<>();
        Stream.of(Optional.of(row.serial()), row.taxon(), row.above())
                .flatMap(Optional::stream)
                .map(serial -> names.getOrDefault(serial, new Names()))
                .forEach(of -> of.synonyms.forEach(synonym -> synonyms.add(synonym.text())));
        return book.of(plant.name(), synonyms)
                .map(said -> withRules(plant, said))
                .orElse(plant);
    }

    private static PlantRecord withRules(PlantRecord plant, PlantRules said) {
        Source source = new Source("sale rules, list compiled on " + said.compiledOn());
        return new PlantRecord(
                plant.key(),
                plant.name(),
                plant.taxon(),
                plant.commonNames(),
                plant.synonyms(),
                plant.facts().and(new Fact<>(Attributes.SALE_RULES, said, source, false)),
                plant.otherFacts(),
                plant.retired());
    }

    private static Facts chosen(Map<Integer, FactReader.Shelf> facts, int plant) {
        FactReader.Shelf shelf = facts.get(plant);
        return shelf == null ? Facts.NONE : Facts.of(shelf.chosen());
    }

    private static Map<PlantKey, Row> rows(Session session, Collection<PlantKey> keys) throws SQLException {
        Map<PlantKey, Row> rows = new HashMap<>();
        Rows.forEach(session, PLANTS, keys, row -> {
            PlantKey key = new PlantKey(row.getString("plant_key"));
            int taxon = row.getInt("taxon_serial");
            boolean hasTaxon = !row.wasNull();
            int above = row.getInt("above_serial");
            boolean hasAbove = !row.wasNull();
            rows.put(
                    key,
                    new Row(
                            row.getInt("serial"),
                            key,
                            NameColumns.read(row),
                            hasTaxon ? Optional.of(taxon) : Optional.empty(),
                            Optional.ofNullable(row.getString("taxon_key")).map(PlantKey::new),
                            hasAbove ? Optional.of(above) : Optional.empty(),
                            row.getInt("retired") == 1));
        });
        return rows;
    }

    private Map<Integer, Names> names(Session session, Collection<Integer> plants) throws SQLException {
        Map<Integer, Names> names = new HashMap<>();
        Rows.forEach(session, NAMES, plants, row -> {
            Names of = names.computeIfAbsent(row.getInt(1), plant -> new Names());
            boolean common = row.getString(2).equals("common");
            String language = row.getString(3);
            String text = row.getString(4);
            // authorities that agree on a synonym are all kept; who else gives a common name is of no interest
            String id = common ? language + ":" + text.toLowerCase(Locale.ROOT) : text + ":" + row.getInt(5);
            if (!of.seen.add(id)) {
                return;
            }
            if (common) {
                of.common.add(new CommonName(text, languages.of(language)));
            } else {
                of.synonyms.add(new Synonym(text, sources.of(session, row.getInt(5))));
            }
        });
        return names;
    }
}
