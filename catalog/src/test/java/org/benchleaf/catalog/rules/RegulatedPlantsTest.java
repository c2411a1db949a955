package org.benchleaf.catalog.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.benchleaf.catalog.intake.RawRow;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.shared.rule.SaleVerdict.Answer;
import org.junit.jupiter.api.Test;

/// The demo's list against `regulated-plants.csv`, of which each row names its source.
class RegulatedPlantsTest {
    private static final String TODAY = "2026-11-25";

    @Test
    void everyPublishedRuleIsInTheList() throws IOException {
        SaleRuleBook book = DemoRules.book();
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        for (RawRow row : published()) {
            String state = row.cells().get(0);
            String status = row.cells().get(2);
            boolean prohibited = !status.startsWith("regulated") && !status.startsWith("Tier 2");
            for (String taxon : taxa(row.cells().get(1))) {
                asked++;
                Answer answer = DemoRules.ask(book, taxon, state, TODAY).answer();
                if (answer != (prohibited ? Answer.BARRED : Answer.ON_CONDITION)) {
                    wrong.add(state + " " + taxon + " (" + status + "): " + answer);
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(asked).isGreaterThan(29);
    }

    /// The privets stand there by their English names: Chinese, European, border.
    private static List<String> taxa(String cell) {
        return cell.startsWith("Ligustrum (")
                ? List.of("Ligustrum sinense", "Ligustrum vulgare", "Ligustrum obtusifolium")
                : List.of(cell.replaceFirst(" \\(.*", ""));
    }

    private static List<RawRow> published() throws IOException {
        try (InputStream file =
                        Objects.requireNonNull(RegulatedPlantsTest.class.getResourceAsStream("regulated-plants.csv"));
                Sheet sheet = SheetReader.open("regulated-plants.csv", file.readAllBytes())) {
            return sheet.rows().toList();
        }
    }
}
