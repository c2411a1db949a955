package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.benchleaf.app.cli.Console;
import org.benchleaf.app.cli.RootCommand;
import org.benchleaf.catalog.model.LedgerKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

class StockCommandTest {
    @TempDir
    Path folder;

    @BeforeEach
    void makeShop() throws IOException {
        assertThat(Run.benchleaf("new", shop()).code()).isZero();
        load("plants.csv", "name,source\nItea virginica,from memory\n");
        load("stock.csv", """
                lot,name,size,count,place,ready_week,price,condition,seen_on
                S1,Itea virginica,#3,220,B4-12,,18.50,full fall color,2026-11-16
                S2,Itea virginica,#3,60,H2-1,2027-W14,18.50,,
                """);
    }

    private String shop() {
        return folder.resolve("shop").toString();
    }

    private void load(String name, String content) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, content);
        assertThat(run("load", file.toString()).code()).isZero();
    }

    private Run run(String... arguments) {
        List<String> all = new ArrayList<>(Arrays.asList(arguments));
        all.addAll(List.of("--workspace", shop()));
        return Run.benchleaf(all.toArray(String[]::new));
    }

    private Run stock(String... arguments) {
        List<String> all = new ArrayList<>(List.of("stock"));
        all.addAll(Arrays.asList(arguments));
        all.addAll(List.of("--who", "Ruth"));
        return run(all.toArray(String[]::new));
    }

    @Test
    void holdsShipsAndReleasesAndSaysWhatIsLeft() {
        Run held = stock("hold", "S1", "20", "--until", "2026-12-01", "--why", "Green Acres", "--key", "green-114");
        assertThat(held.code()).isZero();
        assertThat(held.out()).isEqualTo("""
                20 held until 2 December 2026, 00:00. Lot S1: 220 there, 20 held, 200 free.
                Hold green-114: give that to ship or to release
                Stock as of 25 November 2026, 10:00.
                """);
        assertThat(stock("ship", "S1", "5", "--hold", "green-114").out())
                .startsWith("5 shipped from hold green-114. Lot S1: 215 there, 15 held, 200 free.");
        assertThat(stock("release", "green-114").out())
                .startsWith("15 released from hold green-114. Lot S1: 215 there, 0 held, 215 free.");
    }

    @Test
    void promisesAnItemFromAsFewLotsAsCanBe() {
        Run small = stock("promise", "Itea virginica", "50", "--size", "#3", "--by", "2027-04-12", "--key", "p1");
        assertThat(small.out()).as("the smallest lot that has enough alone").startsWith("50 held. Lot S2: 60 there");
        Run both = stock("promise", "Itea virginica", "225", "--by", "2027-W14", "--key", "p2");
        assertThat(both.out())
                .contains("220 held. Lot S1")
                .contains("5 held. Lot S2")
                .contains("Hold p2-1", "Hold p2-2");
        Run again = stock("promise", "Itea virginica", "225", "--by", "2027-W14", "--key", "p2", "--json");
        assertThat(again.out()).contains("\"number\" : 225").doesNotContain("\"outcome\" : \"applied\"");
    }

    @Test
    void aKeyOfAnotherPromiseIsRefused() throws IOException {
        load("more.csv", "lot,name,size,count\nS3,Itea virginica,#5,30\n");
        assertThat(stock("promise", "Itea virginica", "20", "--size", "#3", "--key", "p9")
                        .code())
                .isZero();
        assertThat(stock("promise", "Itea virginica", "20", "--size", "#5", "--key", "p9")
                        .err())
                .contains("p9");
        assertThat(stock("promise", "Itea virginica", "2", "--size", "#3", "--key", "p9")
                        .code())
                .isEqualTo(2);
        assertThat(run("stock", "history", "S3").out()).contains("0 held");
    }

    @Test
    void promisesNothingWhenThereAreTooFewOrNobodyKnowsWhichSize() throws IOException {
        Run few = stock("promise", "Itea virginica", "221");
        assertThat(few.code()).isEqualTo(2);
        assertThat(few.err().strip())
                .isEqualTo("221 are asked for and 220 are free by 2026-W48; nothing was set aside");
        load("more.csv", "lot,name,size,count\nS3,Itea virginica,#5,30\n");
        assertThat(stock("promise", "Itea virginica", "3").err())
                .contains("sold in several sizes")
                .contains("#3 [");
        assertThat(stock("promise", "Itea virginica", "3", "--size", "#7").err())
                .contains("not sold in that size");
        assertThat(run("stock", "history", "S1").out()).contains("0 held");
    }

    @Test
    void writesAnEntryThatIsSentTwiceOnce() {
        stock("ship", "S1", "5", "--key", "k1");
        Run again = stock("ship", "S1", "5", "--key", "k1", "--json");
        assertThat(again.code()).isZero();
        assertThat(again.out()).contains("\"outcome\" : \"already-applied\"").contains("\"count\" : 215");
    }

    @Test
    void refusesWhatCannotBeInOneSentence() {
        Run tooMany = stock("ship", "S1", "221");
        assertThat(tooMany.code()).isEqualTo(2);
        assertThat(tooMany.err().strip()).isEqualTo("lot S1 has 220 plants: shipped 221 is more than there are");
        assertThat(stock("count", "S1", "7").err()).contains("give a reason with --why");
        assertThat(stock("ship", "S9", "1").err()).contains("lot \"S9\" is not in the catalog");
        assertThat(stock("release", "nobody").err()).contains("there is no hold \"nobody\"");
        assertThat(stock("see", "S1", "sad").code()).isEqualTo(2);
        assertThat(stock("hold", "S1", "1", "--until", "soon").err()).contains("time \"soon\" not understood");
        assertThat(stock("move", "S1", "3").code())
                .as("neither --to nor --place")
                .isEqualTo(2);
    }

    @Test
    void tellsTheStoryOfALot() {
        stock("count", "S1", "180", "--why", "two rows blown over");
        stock("see", "S1", "in bud; full", "--on", "2026-11-24");
        stock("move", "S1", "--place", "C1-3");
        stock("move", "S1", "30", "--to", "S2");
        stock("lose", "S1", "1");
        stock("ready", "S1", "2027-04-05");
        Run history = run("stock", "history", "S1");
        assertThat(history.out())
                .startsWith("Lot S1, Itea virginica in #3: 149 there, 0 held, 149 free")
                .contains("at C1-3", "220 counted", "180 counted", "-40", "two rows blown over")
                .contains("seen 2026-11-24 in bud; full", "30 moved to lot S2", "1 lost")
                .contains("ready from the week of 5 April 2027")
                .contains("Stock as of 25 November 2026, 10:00.");
        assertThat(run("stock", "history", "S2", "--json").out())
                .contains("\"otherLot\" : \"S1\"", "\"change\" : 30", "\"count\" : 90");
    }

    @Test
    void saysWhatCanBePromisedNowAndLaterAndHowItLooked() {
        stock("hold", "S1", "20");
        Run words = run("stock", "availability", "Itea virginica", "--by", "2027-W15");
        assertThat(words.out())
                .contains("200 free now, 20 of 220 held")
                .contains("60 more from the week of 5 April 2027, 260 in all")
                .contains("260 free by the week of 12 April 2027")
                .contains("seen 16 November 2026, 9 days ago: full fall color (lot S1)")
                .contains("Stock as of 25 November 2026, 10:00.");
        assertThat(run("stock", "availability", "Itea virginica", "--json").out())
                .contains("\"asOf\" : \"2026-11-25T10:00:00-05:00\"")
                .contains("\"free\" : 200", "\"more\" : 60", "\"daysAgo\" : 9");
    }

    @Test
    void needPromisesOnlyWhatIsFree() {
        stock("hold", "S1", "200");
        assertThat(run("need", "Itea, 40 in #3").out())
                .contains("#3: 20 now")
                .contains("Stock as of 25 November 2026, 10:00.");
        assertThat(run("need", "Itea, 40 in #3", "--json").out()).contains("\"asOf\" : \"2026-11-25T10:00\"");
    }

    @Test
    void beginsALotWithWhatIsReceived() {
        String json = run("stock", "availability", "Itea virginica", "--json").out();
        String item = json.replaceAll("(?s).*?\"key\" : \"([0-9A-Z]+-\\d+)\".*", "$1");
        assertThat(stock("receive", "S3", "12", "--item", item, "--place", "D1", "--ready", "2027-W20")
                        .out())
                .startsWith("12 received. Lot S3: 12 there, 0 held, 12 free.");
        assertThat(run("stock", "availability", item).out()).contains("12 more from the week of 17 May 2027");
    }

    @Test
    void keepsAPasswordOutOfTheSettings() {
        Run refused = Run.benchleaf(
                "new",
                folder.resolve("other").toString(),
                "--database",
                "jdbc:postgresql://db.example/nursery?user=ann&password=sesame");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("BENCHLEAF_DATABASE_PASSWORD").doesNotContain("sesame");
        assertThat(folder.resolve("other")).doesNotExist();
    }

    @Test
    void everyEntryAndOptionIsDescribed() throws IOException {
        String text = Files.readString(Path.of("../docs/stock.md"));
        Console console = new Console(new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()));
        CommandLine stock = Objects.requireNonNull(
                RootCommand.commandLine(console, Run.NOVEMBER).getSubcommands().get("stock"));
        assertThat(stock.getSubcommands()).hasSize(12);
        stock.getSubcommands().forEach((name, command) -> {
            assertThat(text).contains("benchleaf stock " + name);
            for (OptionSpec option : command.getCommandSpec().options()) {
                if (!option.usageHelp() && !option.versionHelp()) {
                    assertThat(text).as("option of " + name).contains(option.longestName());
                }
            }
        });
        for (LedgerKind kind : LedgerKind.values()) {
            assertThat(text).contains("`" + kind.term() + "`");
        }
    }
}
