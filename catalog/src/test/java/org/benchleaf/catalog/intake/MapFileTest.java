package org.benchleaf.catalog.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.fact.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MapFileTest {
    static Stream<ColumnMap> maps() {
        return Stream.of(ColumnMaps.ownPlants(), ColumnMaps.ownStock(), ColumnMaps.usdaCharacteristics());
    }

    @ParameterizedTest
    @MethodSource("maps")
    void readsBackWhatItWrites(ColumnMap map) {
        assertThat(MapFile.read(MapFile.write(map)).orThrow()).isEqualTo(map);
    }

    @Test
    void hasAColumnOfTheOwnFormatForEveryAttribute() {
        assertThat(ColumnMaps.ownPlants().columns().stream().map(Column::field))
                .containsAll(Attributes.all().stream().map(Attribute::id).toList());
    }

    @Test
    void refusesAMemberNobodyKnowsWithItsPlace() {
        String json = """
                {"id": "mine", "rows": "plants", "rank": "own",
                 "columns": [{"heading": "Plant", "field": "name", "requierd": true}]}
                """;
        Problem problem = MapFile.read(json).refusal().orElseThrow();
        assertThat(problem.key()).isEqualTo("map.unreadable");
        assertThat(problem.details()).containsEntry("line", "2");
        assertThat(problem.details().get("read")).contains("requierd");
    }

    @Test
    void refusesWhatIsNotJsonAndWhatIsTwice() {
        assertThat(MapFile.read("name -> height").refusal()).map(Problem::key).contains("map.unreadable");
        assertThat(MapFile.read("").refusal()).map(Problem::key).contains("map.unreadable");
        assertThat(MapFile.read("null").refusal()).map(Problem::key).contains("map.incomplete");
        assertThat(MapFile.read("{\"id\": \"a\", \"id\": \"b\"}").refusal())
                .map(Problem::key)
                .contains("map.unreadable");
        assertThat(MapFile.read("{\"id\": \"a\"}").refusal()).map(Problem::key).contains("map.incomplete");
    }

    @Test
    void refusesAFieldNobodyKnows() {
        String json = """
                {"id": "mine", "rows": "stock", "rank": "own", "columns": [{"heading": "Plant", "field": "height"}]}
                """;
        assertThat(MapFile.read(json).refusal()).contains(Problem.of("map.field", "height"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{'id': 'a', 'rows': 'plants', 'rank': 'own', 'columns': [null]}",
                "{'id': 'a', 'rows': 'plants', 'rank': 'own', 'columns': [{'heading': 'b', 'field': 'name', 'words': {'c': null}}]}",
                "{'id': 'a', 'rows': 'plants', 'rank': 'own', 'columns': [{'headings': [null], 'field': 'name'}]}",
                "{'id': 'a', 'rows': 'plants', 'rank': 'own', 'columns': [{'headings': [], 'field': 'name'}]}",
                "{'id': 'a', 'rows': 'plants', 'rank': 'own', 'columns': [], 'passedOver': [null]}",
                "{'id': 'a', 'rows': 'trees', 'rank': 'own', 'columns': []}",
                "{'id': 'a', 'rows': 'plants', 'rank': 'own', 'columns': [{'heading': 'b', 'field': 'height', 'unit': 'yd'}]}",
                "{'id': 'a', 'rows': 'plants', 'rank': 'own', 'columns': [{'heading': 'b', 'field': 'bloom',"
                        + " 'cases': [{'when': {'b': [null]}, 'value': 'May'}]}]}",
            })
    void refusesHalfMadeMapsAsValuesNotExceptions(String json) {
        assertThat(MapFile.read(json.replace('\'', '"')).refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).startsWith("map."));
    }

    @Test
    void proposesAMapForAGrowersPlantList() {
        List<String> headings =
                List.of("Botanical Name", "Common Name", "USDA Zone", "Mature Height (ft)", "Width_in", "Light", "Bin");
        ColumnMap map = MapProposal.of("grower", headings, new Source("grower's list"));

        assertThat(map.rows()).isEqualTo(RowKind.PLANTS);
        assertThat(map.columns())
                .containsExactly(
                        Column.of("Botanical Name", "name"),
                        Column.of("Common Name", "common_names"),
                        Column.of("USDA Zone", "hardiness"),
                        Column.of("Mature Height (ft)", "height").withUnit("ft"),
                        Column.of("Width_in", "spread").withUnit("in"),
                        Column.of("Light", "exposure"));
    }

    @Test
    void proposesAMapForAnAvailabilityList() {
        ColumnMap map = MapProposal.of(
                "stock", List.of("Lot No", "Plant Name", "Container", "Qty", "Location"), new Source("grower"));
        assertThat(map.rows()).isEqualTo(RowKind.STOCK);
        assertThat(map.columns().stream().map(Column::field)).containsExactly("lot", "name", "size", "count", "place");
    }
}
