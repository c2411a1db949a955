package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PairingWords;
import org.benchleaf.app.service.ReferencePlants;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.search.pairing.Companion;
import org.benchleaf.search.pairing.Partner;
import org.benchleaf.search.pairing.Pollination;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.measure.HardinessZone;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.rule.Shipment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "pairings",
        mixinStandardHelpOptions = true,
        description = "Names the partners that a plant needs for its fruit, and companions that like the same site and"
                + " show when it does not.")
final class PairingsCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(arity = "1..*", paramLabel = "PLANT", description = "a plant's key or name")
    private List<String> words = List.of();

    @Option(names = "--zone", paramLabel = "ZONE", description = "companions hardy in this zone, for example 6a")
    private Optional<String> zone = Optional.empty();

    @Option(
            names = "--limit",
            paramLabel = "N",
            defaultValue = "5",
            description = "how many of each, 1 to 50 (default: ${DEFAULT-VALUE})")
    private int limit;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    PairingsCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        int most = Math.clamp(limit, 1, 50);
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            PlantRecord plant =
                    benchleaf.originals().find(String.join(" ", words)).plant();
            List<Partner> partners =
                    benchleaf.partners().of(plant).stream().limit(most).toList();
            Optional<Shipment> shipment =
                    benchleaf.settings().place().map(home -> new Shipment(home, benchleaf.today(), Optional.of(home)));
            YearWeek week = YearWeek.of(benchleaf.today());
            List<Companion> companions =
                    benchleaf.companions().of(plant, zone.map(PairingsCommand::zone), shipment, week, most);
            PairingWords words = new PairingWords(benchleaf.wording());
            if (json) {
                console.out().println(json(plant, partners, companions, words));
            } else {
                write(plant, partners, companions, words, week, console.out());
            }
        }
        return ErrorReport.DONE;
    }

    /// A whole zone means its colder half.
    private static HardinessZone zone(String text) {
        return switch (ZoneRange.read(text)) {
            case Reading.Read<ZoneRange>(ZoneRange range) -> range.coldest();
            case Reading.Refused<ZoneRange>(var problem) -> throw new Refusal(problem);
        };
    }

    private static void write(
            PlantRecord plant,
            List<Partner> partners,
            List<Companion> companions,
            PairingWords words,
            YearWeek week,
            PrintWriter out) {
        out.println(ReferencePlants.isReference(plant) ? plant.name() : plant.name() + "  [" + plant.key() + "]");
        out.println("  " + words.pollination(plant, partners));
        for (Partner partner : partners) {
            out.println("    " + partner.plant().name() + "  ["
                    + partner.plant().key() + "]: " + words.partner(partner, week));
        }
        if (!companions.isEmpty()) {
            out.println();
            out.println("  " + words.text("pairing.companions", Map.of()));
        }
        for (Companion companion : companions) {
            out.println("    " + companion.match().plant().name() + "  ["
                    + companion.match().plant().key() + "]: " + words.companion(companion, week));
        }
    }

    private static String json(
            PlantRecord plant, List<Partner> partners, List<Companion> companions, PairingWords words) {
        ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
        ObjectNode root = mapper.createObjectNode();
        Pollination pollination = Pollination.of(plant.facts());
        root.put("name", plant.name().toString());
        root.put("pollination", SubstituteJson.word(pollination));
        root.put("partnerRequired", pollination.isRequired());
        root.put("text", words.pollination(plant, partners));
        ArrayNode array = root.putArray("partners");
        for (Partner partner : partners) {
            array.addObject()
                    .put("key", partner.plant().key().text())
                    .put("name", partner.plant().name().toString())
                    .put("how", SubstituteJson.word(partner.how()))
                    .put("bloom", SubstituteJson.word(partner.bloom()))
                    .put("inStock", partner.stock().lots().stream().anyMatch(lot -> lot.count() > 0));
        }
        ArrayNode more = root.putArray("companions");
        for (Companion companion : companions) {
            more.addObject()
                    .put("key", companion.match().plant().key().text())
                    .put("name", companion.match().plant().name().toString())
                    .put("fills", companion.fills().toString());
        }
        try {
            return mapper.writeValueAsString(root);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
