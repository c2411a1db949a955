package org.benchleaf.catalog.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.catalog.rules.DemoRules.rows;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.benchleaf.catalog.intake.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleListReaderTest {
    private static final String GOOD = "PA-1,,US-PA,Pyrus calleryana,,,prohibited,,,2024-02-10,,,,a gazette,2026-01-01";

    @Test
    void readsARowAndWritesItBackEqual() throws RuleCells.Unreadable {
        SaleRule rule =
                rows("NY-1,quarantine,US-NY / Erie; US-NY / Niagara,Buxus,Buxus sempervirens,cultivars,restricted,"
                                + "2021-01-01,2021-02-01,2021-03-01,2030-01-01,'Aurea' (with a permit); 'X',a notice,s,2026-01-01")
                        .rules()
                        .getFirst();

        assertThat(rule.exempt()).containsExactly(new Exemption("'Aurea'", "with a permit"), new Exemption("'X'", ""));
        assertThat(rule.hybrids()).isFalse();
        assertThat(RuleCells.read(RuleCells.write(rule))).isEqualTo(rule);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        PA-2,,Atlantis,Pyrus calleryana,,,prohibited,,,,,,,s,2026-01-01                 | region.unknown | jurisdiction
        PA-2,,US-PA,12,,,prohibited,,,,,,,s,2026-01-01                                  | name.unknown   | taxon
        PA-2,,US-PA,Pyrus,,,forbidden,,,,,,,s,2026-01-01                                | term.unknown   | standing
        PA-2,,US-PA,Pyrus,,,prohibited,,,10/2/2024,,,,s,2026-01-01                      | rules.day      | sale_from
        PA-2,,US-PA,Pyrus,,,prohibited,,2025-01-01,2024-01-01,,,,s,2026-01-01           | rules.dates    | receipt_from
        PA-2,,US-PA,Pyrus,,,prohibited,,,,,,,,2026-01-01                                | text.empty     | source
        PA-2,,US-PA,Pyrus,,,prohibited,,,,,,,s,                                         | text.empty     | compiled_on
        PA-2,,US-PA,Pyrus,,everything,prohibited,,,,,,,s,2026-01-01                     | term.unknown   | covers
        PA-1,,US-PA,Pyrus,,,prohibited,,,,,,,s,2026-01-01                               | rules.id.twice | id
        """)
    void rowThatIsNoRuleIsNamedWithItsCellAndTheListIsNotLoaded(String row, String problem, String column) {
        RuleList list = rows(GOOD, row);

        assertThat(list.isBroken()).isTrue();
        assertThat(list.findings()).hasSize(1);
        Finding finding = list.findings().getFirst();
        assertThat(finding.problem().key()).isEqualTo(problem);
        assertThat(finding.place()).hasToString("test.csv row 3, column " + column);
    }

    @Test
    void missingColumnIsNamed() {
        RuleList list = DemoRules.read("test.csv", "id,taxon\nPA-1,Pyrus\n".getBytes(StandardCharsets.UTF_8));

        assertThat(list.isBroken()).isTrue();
        assertThat(list.findings())
                .extracting(finding -> finding.problem().key())
                .containsOnly("heading.missing");
    }

    @Test
    void everyColumnIsDocumented() throws Exception {
        String text = Files.readString(Path.of("../docs/sale-rules.md"));

        for (RuleColumn column : RuleColumn.values()) {
            assertThat(text).contains("| `" + column.heading() + "` |");
        }
    }
}
