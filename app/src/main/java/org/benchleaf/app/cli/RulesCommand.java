package org.benchleaf.app.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.SaleRuleService;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.rules.RuleList;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.SaleVerdict.Answer;
import org.benchleaf.shared.rule.Shipment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        description =
                "What states and counties say about selling a plant, by lists that are as old as they say. Exit code 1: it may not be sold there, or that is not clear.")
final class RulesCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(arity = "0..*", paramLabel = "PLANT", description = "a plant key or a name, in the catalog or not")
    private List<String> words = List.of();

    @Option(
            names = "--ship-to",
            paramLabel = "STATE",
            description =
                    "where it is sold or shipped to: PA, Pennsylvania, 'Suffolk County, NY'; without it every place is listed")
    private Optional<String> shipTo = Optional.empty();

    @Option(names = "--county", paramLabel = "NAME", description = "the county there")
    private Optional<String> county = Optional.empty();

    @Option(names = "--on", paramLabel = "DATE", description = "the day, such as 2027-03-01 (default: today)")
    private Optional<String> on = Optional.empty();

    @Option(
            names = "--from",
            paramLabel = "STATE",
            description = "where it comes from (default: the shop's place in its settings)")
    private Optional<String> from = Optional.empty();

    @Option(
            names = "--revision",
            paramLabel = "N",
            description = "by the lists as they were at that state of the catalog")
    private Optional<Long> revision = Optional.empty();

    @Option(
            names = "--load",
            paramLabel = "FILE",
            description = "load a list of rules; its columns are described in docs/sale-rules.md")
    private Optional<Path> load = Optional.empty();

    @Option(names = "--json", description = "for machines")
    private boolean json;

    RulesCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            if (load.isPresent()) {
                int code = load(benchleaf, load.get());
                if (words.isEmpty() || code != ErrorReport.DONE) {
                    return code;
                }
            }
            return ask(benchleaf);
        }
    }

    private int load(Benchleaf benchleaf, Path file) {
        RuleList list = SaleRuleService.read(file);
        if (json) {
            Optional<Long> state = list.isBroken() ? Optional.empty() : Optional.of(take(benchleaf, list));
            console.out().println(new RulesJson(benchleaf.wording()).loaded(file, list, state));
            return list.isBroken() ? ErrorReport.FINDINGS : ErrorReport.DONE;
        }
        FindingText findings = new FindingText(benchleaf.wording());
        list.findings().forEach(finding -> console.out().println(findings.line(finding)));
        if (list.isBroken()) {
            console.out().println(benchleaf.wording().text("rules.not-loaded", Map.of("file", file.toString())));
            return ErrorReport.FINDINGS;
        }
        long state = take(benchleaf, list);
        console.out()
                .println(benchleaf
                        .wording()
                        .text(
                                "rules.loaded",
                                Map.of(
                                        "count",
                                                benchleaf
                                                        .wording()
                                                        .count(list.rules().size()),
                                        "file", file.toString(),
                                        "date",
                                                benchleaf
                                                        .wording()
                                                        .date(list.compiledOn().orElseThrow()),
                                        "revision", Long.toString(state))));
        return ErrorReport.DONE;
    }

    private static long take(Benchleaf benchleaf, RuleList list) {
        long state = benchleaf.saleRules().load(list).number();
        benchleaf.afterChange();
        return state;
    }

    private int ask(Benchleaf benchleaf) {
        LocalDate day = on.map(Given::day).orElse(benchleaf.today());
        Optional<Destination> origin =
                from.map(text -> place(text, Optional.empty())).or(benchleaf.settings()::place);
        SaleRuleService.Said said = benchleaf
                .saleRules()
                .ask(String.join(" ", words), revision.map(CatalogRevision::new), benchleaf.plantFinder());
        RulesText text = new RulesText(benchleaf.wording());
        RulesJson machine = new RulesJson(benchleaf.wording());
        if (shipTo.isEmpty()) {
            console.out().print(json ? machine.all(said, day) : text.all(said, day));
            return ErrorReport.DONE;
        }
        Shipment shipment = new Shipment(place(shipTo.get(), county), day, origin);
        SaleVerdict verdict = said.rules().at(shipment);
        console.out().print(json ? machine.verdict(said, verdict) : text.verdict(said, verdict));
        return verdict.answer() == Answer.BARRED || verdict.answer() == Answer.UNCLEAR
                ? ErrorReport.FINDINGS
                : ErrorReport.DONE;
    }

    private static Destination place(String text, Optional<String> county) {
        Destination place = switch (Destination.read(text)) {
            case Reading.Read<Destination>(Destination read) -> read;
            case Reading.Refused<Destination>(Problem problem) -> throw new Refusal(problem);
        };
        return county.isPresent() ? new Destination(place.region(), county) : place;
    }
}
