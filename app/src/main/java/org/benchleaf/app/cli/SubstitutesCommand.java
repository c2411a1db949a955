package org.benchleaf.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.OriginalFinder;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.Purpose;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.rule.Shipment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "substitutes",
        mixinStandardHelpOptions = true,
        description = "Names plants that do the same work as another one, grown here or not: in stock, lawful, hardy,"
                + " compared point by point in words to be read aloud.")
final class SubstitutesCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final NeedOptions options = new NeedOptions();

    @Parameters(
            arity = "0..*",
            paramLabel = "NAME",
            description = "the plant to be replaced: a key, a botanical or a common name")
    private List<String> words = List.of();

    @Option(names = "--quantity", paramLabel = "N", description = "so many are wanted (default: 1)")
    private Optional<Integer> quantity = Optional.empty();

    @Option(
            names = "--for",
            paramLabel = "PURPOSE",
            description = "what it was wanted for: a use such as hedge, or a season such as 'fall color'"
                    + " (default: its usual uses and strongest seasons)")
    private Optional<String> purpose = Optional.empty();

    @Option(
            names = "--limit",
            paramLabel = "N",
            defaultValue = "3",
            description = "how many, and at most in each group, 1 to 50 (default: ${DEFAULT-VALUE})")
    private int limit;

    @Option(names = "--all", description = "whether in stock or not")
    private boolean all;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    @Option(
            names = "--batch",
            paramLabel = "FILE",
            description = "one name a line, - for standard input; answers one line of JSON each")
    private Optional<String> batch = Optional.empty();

    SubstitutesCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        if (batch.isEmpty() && words.isEmpty()) {
            throw new Refusal(Problem.of("name.missing", ""));
        }
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            OriginalFinder originals = benchleaf.originals();
            SubstituteFinder finder = benchleaf.substitutes();
            if (batch.isPresent()) {
                eachLine(benchleaf, originals, finder, batch.get());
                return ErrorReport.DONE;
            }
            String typed = String.join(" ", words);
            OriginalFinder.Found found = originals.find(typed);
            SubstituteQuery query = query(benchleaf, found);
            var answer = finder.find(query);
            if (json) {
                console.out()
                        .println(new SubstituteJson(benchleaf.wording(), benchleaf.settings(), true)
                                .text(typed, found, answer));
            } else {
                new SubstituteText(benchleaf.wording()).write(found, typed, query, answer, console.out());
            }
        }
        return ErrorReport.DONE;
    }

    private void eachLine(Benchleaf benchleaf, OriginalFinder originals, SubstituteFinder finder, String file) {
        SubstituteJson lines = new SubstituteJson(benchleaf.wording(), benchleaf.settings(), false);
        try (BufferedReader reader = file.equals("-")
                ? new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))
                : Files.newBufferedReader(Path.of(file), StandardCharsets.UTF_8)) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.isBlank()) {
                    console.out().println(answered(benchleaf, originals, finder, lines, line.strip()));
                }
                if (!reader.ready()) {
                    console.out().flush();
                }
            }
        } catch (NoSuchFileException missing) {
            throw new Refusal(Problem.of("file.missing", file));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /// A name that is not known is told in its line; the others are answered all the same.
    private String answered(
            Benchleaf benchleaf,
            OriginalFinder originals,
            SubstituteFinder finder,
            SubstituteJson lines,
            String typed) {
        OriginalFinder.Found found;
        try {
            found = originals.find(typed);
        } catch (Refusal unknown) {
            return lines.refused(typed, benchleaf.wording().problem(unknown.problem()));
        }
        return lines.text(typed, found, finder.find(query(benchleaf, found)));
    }

    private SubstituteQuery query(Benchleaf benchleaf, OriginalFinder.Found found) {
        LocalDate today = benchleaf.today();
        List<WeighedWish> asked =
                options.changed(options.wishes(today, benchleaf.settings().place(), benchleaf.postalZones()));
        Optional<Wish.InStock> stock = only(asked, Wish.InStock.class);
        int count = quantity.orElse(stock.map(Wish.InStock::count).orElse(1));
        if (count < 1) {
            throw new Refusal(Problem.of("substitute.quantity", Integer.toString(count)));
        }
        Demand demand = new Demand(count, stock.flatMap(Wish.InStock::size), stock.flatMap(Wish.InStock::by), !all);
        // a shop sells at home when nobody says where
        Optional<Shipment> shipment = only(asked, Wish.ShipTo.class)
                .map(Wish.ShipTo::shipment)
                .or(() -> benchleaf
                        .settings()
                        .place()
                        .map(home -> new Shipment(
                                home, demand.by().map(YearWeek::monday).orElse(today), Optional.of(home))));
        List<WeighedWish> others = new ArrayList<>(asked);
        others.removeIf(wish -> wish.wish() instanceof Wish.InStock || wish.wish() instanceof Wish.ShipTo);
        if (found.wholeGenus()) {
            others.add(WeighedWish.of(new Wish.NotOfGenus(found.plant().name().genus())));
        }
        return new SubstituteQuery(
                found.plant(),
                purpose.map(SubstitutesCommand::purpose).orElse(Purpose.NOT_SAID),
                demand,
                shipment,
                others,
                YearWeek.of(today),
                Math.clamp(limit, 1, SubstituteQuery.MOST));
    }

    private static <W extends Wish> Optional<W> only(List<WeighedWish> wishes, Class<W> kind) {
        return wishes.stream()
                .map(WeighedWish::wish)
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst();
    }

    private static Purpose purpose(String text) {
        return Term.read(Use.class, text)
                .toOptional()
                .map(Purpose::of)
                .or(() -> Term.read(Season.class, text).toOptional().map(Purpose::of))
                .orElseThrow(() -> new Refusal(Problem.of("substitute.for", text)
                        .with(
                                "accepted",
                                Stream.concat(Arrays.stream(Use.values()), Arrays.stream(Season.values()))
                                        .map(Term::term)
                                        .collect(Collectors.joining(", ")))));
    }
}
