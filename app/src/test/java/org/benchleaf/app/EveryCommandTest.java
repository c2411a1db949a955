package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.benchleaf.app.cli.Console;
import org.benchleaf.app.cli.RootCommand;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Walk;
import org.benchleaf.demo.DemoCatalog;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.Condition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/// What holds for all commands, those added later too.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryCommandTest {
    /// Commands that answer nothing a machine would read, each with the reason.
    private static final Map<String, String> WITHOUT_JSON = Map.of(
            "demo", "shows a person what the program does",
            "new", "makes a folder and answers nothing",
            "serve", "runs until it is stopped; machines ask it over the web",
            "print", "makes documents; what stands on them is asked of the commands that answer",
            "staff add", "a person gives a password",
            "staff password", "a person gives a password",
            "staff role", "changes one thing and says so; the list tells who may what",
            "staff leave", "changes one thing and says so; the list tells who may what",
            "staff token", "shows a secret once, to a person");

    private final Map<String, CommandLine> commands = commands();

    private static Map<String, CommandLine> commands() {
        Console console = new Console(new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()));
        Map<String, CommandLine> all = new TreeMap<>();
        collect("", RootCommand.commandLine(console, Run.NOVEMBER), all);
        return all;
    }

    private static void collect(String before, CommandLine of, Map<String, CommandLine> all) {
        of.getSubcommands().forEach((name, command) -> {
            String path = (before + " " + name).strip();
            if (command.getSubcommands().isEmpty()) {
                all.put(path, command);
            }
            collect(path, command, all);
        });
    }

    Stream<String> eachThatAnswers() {
        return commands.keySet().stream()
                .filter(command ->
                        !WITHOUT_JSON.containsKey(command) && !WITHOUT_JSON.containsKey(command.split(" ")[0]));
    }

    private CommandLine.Model.CommandSpec spec(String command) {
        return Optional.ofNullable(commands.get(command)).orElseThrow().getCommandSpec();
    }

    @ParameterizedTest
    @MethodSource("eachThatAnswers")
    void answersInJsonWhenAsked(String command) {
        assertThat(spec(command).optionsMap()).containsKey("--json");
    }

    @ParameterizedTest
    @MethodSource("eachThatAnswers")
    void saysWhatItDoesAndWhatEachOptionMeans(String command) {
        CommandLine.Model.CommandSpec spec = spec(command);
        assertThat(spec.usageMessage().description()).isNotEmpty();
        assertThat(spec.args())
                .allSatisfy(argument -> assertThat(argument.description())
                        .as(argument.paramLabel())
                        .isNotEmpty());
    }

    @Test
    void namesNoCommandThatIsGone() {
        assertThat(WITHOUT_JSON.keySet())
                .allSatisfy(name -> assertThat(commands.keySet())
                        .anyMatch(command -> command.equals(name) || command.startsWith(name + " ")));
    }

    @Test
    void printsJsonThatCanBeRead(@TempDir Path folder) throws IOException {
        String shop = folder.resolve("shop").toString();
        Path plants = Files.writeString(
                folder.resolve("plants.csv"),
                "name,common_names,height,hardiness,source\nAcer rubrum,red maple,40-60 ft,3-9,a book\n");
        Path stock = Files.writeString(
                folder.resolve("stock.csv"),
                "lot,name,size,place,count,ready_week,price\n"
                        + "L1,Acer rubrum,#3,A1,20,,18.50\n"
                        + "L2,Acer rubrum,#3,A2,5,,\n");
        Path zones = Files.writeString(folder.resolve("zones.csv"), "zipcode,zone\n17001,6b\n");
        Path advice =
                Files.writeString(folder.resolve("advice.csv"), "original,instead\nAcer platanoides,Acer rubrum\n");
        Path rules = folder.resolve("rules.csv");
        try (InputStream demo = DemoCatalog.open(DemoCatalog.ruleFiles().getFirst())) {
            Files.write(rules, demo.readAllBytes());
        }
        Path out = folder.resolve("out.csv");
        assertThat(Run.benchleaf("new", shop).code()).isZero();
        List<List<String>> asked = List.of(
                List.of("preview", plants.toString()),
                List.of("load", plants.toString()),
                List.of("load", stock.toString()),
                List.of("undo"),
                List.of("load", stock.toString()),
                List.of("map", plants.toString()),
                List.of("plant", "Acer rubrum"),
                List.of("name", "acer rubrun"),
                List.of("audit"),
                List.of("export", "plants", out.toString()),
                List.of("need", "zone 6"),
                List.of("facets", "zone 6"),
                List.of("why", "Acer rubrum", "zone 6"),
                List.of("zones", zones.toString()),
                List.of("advice", advice.toString()),
                List.of("size", "#3"),
                List.of("rules", "--load", rules.toString()),
                List.of("rules", "Acer rubrum", "--ship-to", "PA"),
                List.of("substitutes", "Acer rubrum"),
                List.of("pairings", "Acer rubrum"),
                List.of("list", "new", "job", "--zone", "6a"),
                List.of("list", "add", "job", "Acer rubrum", "--quantity", "3"),
                List.of("list", "show"),
                List.of("list", "show", "job"),
                List.of("list", "check", "job"),
                List.of("list", "quantity", "--area", "20 sq ft", "--spacing", "12 in"),
                List.of("list", "site", "job", "--ship-to", "PA"),
                List.of("list", "export", "job", folder.resolve("job.csv").toString()),
                List.of("list", "remove", "job", "1"),
                List.of("list", "remove", "job"),
                List.of("stock", "receive", "L1", "5"),
                List.of("stock", "count", "L1", "24", "--why", "recount"),
                List.of("stock", "hold", "L1", "2", "--key", "k"),
                List.of("stock", "promise", "Acer rubrum", "2"),
                List.of("stock", "release", "k"),
                List.of("stock", "ship", "L1", "1"),
                List.of("stock", "lose", "L1", "1", "--why", "wind"),
                List.of("stock", "move", "L1", "2", "--to", "L2"),
                List.of("stock", "ready", "L1", "2027-W15"),
                List.of("stock", "see", "L1", "in bud", "--on", "2026-11-24"),
                List.of("stock", "history", "L1"),
                List.of("stock", "availability", "Acer rubrum"),
                List.of("staff", "list"),
                List.of("settings", "palette", "fern"),
                List.of("walk", "list"),
                List.of("walk", "seen"),
                List.of("bulletin", "publish"),
                List.of("bulletin", "list"),
                List.of("backup", folder.resolve("backups").toString()));
        for (List<String> words : asked) {
            List<String> all = new ArrayList<>(words);
            all.add("--json");
            if (!List.of("size", "list quantity").contains(path(words))) {
                all.addAll(List.of("--workspace", shop));
            }
            if (path(words).equals("bulletin publish")) {
                seesAMaple(Path.of(shop));
            }
            Run run = Run.benchleaf(all.toArray(String[]::new));
            assertThat(run.err()).as("%s", words).isEmpty();
            JsonNode answer = new ObjectMapper().readTree(run.out());
            assertThat(answer.isContainerNode()).as("%s: %s", words, run.out()).isTrue();
        }
        try (Stream<Path> made = Files.list(folder.resolve("backups"))) {
            Path backup = made.findFirst().orElseThrow();
            Run run = Run.benchleaf(
                    "restore",
                    backup.toString(),
                    "--json",
                    "-w",
                    folder.resolve("again").toString());
            assertThat(new ObjectMapper().readTree(run.out()).get("plants").asInt())
                    .isEqualTo(1);
        }
        assertThat(Stream.concat(asked.stream().map(this::path), Stream.of("restore"))
                        .distinct())
                .as("every command is asked")
                .containsAll(eachThatAnswers().toList());
    }

    private static void seesAMaple(Path shop) {
        try (Benchleaf benchleaf = Benchleaf.open(shop, Run.NOVEMBER)) {
            Instant now = benchleaf.now().atZone(benchleaf.zone()).toInstant();
            PlantKey maple = benchleaf.plantFinder().find("Acer rubrum").key();
            benchleaf
                    .walks()
                    .note(new Sighting(
                            "seen-0001",
                            new Walk("walk-0001", "Ann", now),
                            maple,
                            Optional.empty(),
                            Optional.of("L1"),
                            "A1",
                            Set.of(Condition.IN_BUD),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            "full buds",
                            now));
        }
    }

    private String path(List<String> words) {
        String two = words.stream().limit(2).reduce((a, b) -> a + " " + b).orElse("");
        return commands.containsKey(two) ? two : words.get(0);
    }
}
