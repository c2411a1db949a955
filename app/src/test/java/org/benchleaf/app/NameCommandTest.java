package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Names asked over the counter and over the telephone, on the demo catalog.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NameCommandTest {
    private Path folder = Path.of("");
    private String shop = "";

    @BeforeAll
    void runTheDemo(@TempDir Path empty) {
        folder = empty;
        shop = folder.resolve("demo").toString();
        Run.benchleaf("demo", shop);
    }

    private Run name(String... arguments) {
        List<String> all = new ArrayList<>(List.of("name", "--workspace", shop));
        all.addAll(List.of(arguments));
        return Run.benchleaf(all.toArray(String[]::new));
    }

    @Test
    void saysWhichOlderNameAPlantIsFoundByAndWhoGivesIt() {
        assertThat(name("Cimicifuga racemosa").out())
                .contains("Actaea racemosa  (older name: Cimicifuga racemosa, according to ");
    }

    @Test
    void findsWhatARecordingHeard() {
        assertThat(name("lucothee").out()).contains("Leucothoe fontanesiana");
        assertThat(name("kory", "opsis").out()).contains("Coreopsis verticillata");
        assertThat(name("high drain jah").out()).contains("Hydrangea").contains("sounds alike");
    }

    @Test
    void setsASizeAndAPriceBehindANameApart() {
        assertThat(name("Acer x freemanii Armstrong #7 $45.00").out())
                .contains("Acer ×freemanii 'Armstrong'  (")
                .doesNotContain("left over");
    }

    @Test
    void namesTheKinOfAPlantThatIsNotHere() {
        assertThat(name("Fothergilla major 'Bright Quibblefrock'").out())
                .contains("nothing is called")
                .contains("its nearest kin here:")
                .contains("Fothergilla major")
                .doesNotContain("Fothergilla gardenii");
        assertThat(name("--json", "Fothergilla nosuchspecies 'Qqqqq'").out())
                .contains("\"kin\" : [")
                .contains("Fothergilla gardenii");
    }

    @Test
    void givesPartsAndPlantsAsJson() {
        assertThat(name("--json", "Acer x freemanii 'Armstrong'").out())
                .contains("\"outcome\" : \"read\"")
                .contains("\"speciesMark\" : \"×\"")
                .contains("\"cultivar\" : \"Armstrong\"")
                .contains("\"html\" : \"<i>Acer</i> ×<i>freemanii</i> 'Armstrong'\"")
                .contains("\"how\" : \"folded\"");
    }

    @Test
    void answersABatchLineByLine() throws IOException {
        Path batch = Files.writeString(folder.resolve("names.txt"), "Acer rubrum\nno such plant qqqqq\nred maple\n");

        List<String> lines = name("--batch", batch.toString()).out().lines().toList();

        assertThat(lines).hasSize(3);
        assertThat(lines.get(0))
                .startsWith("{\"typed\":\"Acer rubrum\",\"read\":{\"outcome\":\"read\"")
                .contains("\"how\":\"exact\"");
        assertThat(lines.get(1)).endsWith("\"plants\":[]}");
        assertThat(lines.get(2)).contains("\"how\":\"common-name\"");
    }

    @Test
    void saysWhatIsMissing() {
        Run nothing = name();
        assertThat(nothing.code()).isEqualTo(2);
        assertThat(nothing.err().strip()).isEqualTo("which name? Write one, or give a file of names with --batch");
    }
}
