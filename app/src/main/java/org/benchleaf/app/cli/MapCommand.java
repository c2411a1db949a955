package org.benchleaf.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.catalog.intake.Column;
import org.benchleaf.catalog.intake.ColumnMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "map",
        mixinStandardHelpOptions = true,
        description =
                "Proposes what the columns of a spreadsheet mean, by headings and contents, and saves it under a name"
                        + " in the workspace (maps/NAME.json), to be corrected once and used with --map NAME. Without a"
                        + " file: lists the names.")
final class MapCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "a CSV file or a workbook (.xlsx)")
    private Optional<Path> file = Optional.empty();

    @Mixin
    private final MapOptions maps = new MapOptions();

    @Option(names = "--save", paramLabel = "NAME", description = "save it under this name")
    private Optional<String> name = Optional.empty();

    @Option(names = "--replace", description = "replace a saved map of this name")
    private boolean replace;

    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    MapCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        PrintWriter out = console.out();
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            ImportService imports = benchleaf.imports();
            if (file.isEmpty()) {
                if (json) {
                    out.println(MapJson.names(imports.maps().names()));
                } else {
                    imports.maps().names().forEach(out::println);
                }
                return ErrorReport.DONE;
            }
            ColumnMap map = maps.map().isPresent()
                    ? imports.maps().named(maps.map().get())
                    : imports.propose(file.get(), maps.sheet(), name.orElse("proposed"));
            List<String> headings = imports.headings(file.get(), maps.sheet());
            Optional<Path> saved = name.map(each -> imports.maps().save(map, each, replace));
            if (json) {
                out.println(MapJson.map(map, headings, saved));
                return ErrorReport.DONE;
            }
            for (String heading : headings) {
                out.printf("  %-30s %s%n", heading, meaning(map, heading, benchleaf));
            }
            if (saved.isPresent() && name.isPresent()) {
                out.println(benchleaf
                        .wording()
                        .text("map.saved", Map.of("file", saved.get().toString(), "name", name.get())));
            }
        }
        return ErrorReport.DONE;
    }

    private static String meaning(ColumnMap map, String heading, Benchleaf benchleaf) {
        List<String> fields = map.columns().stream()
                .filter(column -> column.headings().contains(heading))
                .map(column -> column.field() + unit(column))
                .toList();
        return fields.isEmpty() ? benchleaf.wording().text("map.unused") : String.join(", ", fields);
    }

    private static String unit(Column column) {
        return column.unit().map(unit -> " (" + unit + ")").orElse("");
    }
}
