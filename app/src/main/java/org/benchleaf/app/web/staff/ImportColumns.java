package org.benchleaf.app.web.staff;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.ImportService;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Upload;
import org.benchleaf.catalog.intake.Column;
import org.benchleaf.catalog.intake.ColumnMap;
import org.benchleaf.catalog.intake.ColumnMaps;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.MapFile;
import org.benchleaf.catalog.intake.RowKind;
import org.benchleaf.catalog.intake.SheetException;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.fact.Source;

/// What the columns of a spreadsheet mean: proposed, corrected in the page, and kept under a name for the next one.
final class ImportColumns {
    private static final int SAMPLE = 3;
    private static final int LONGEST = 60;

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final PendingFiles files;
    private final BiFunction<Request, ImportPlan, Reply> shown;

    /// @param shown shows what a plan would change
    ImportColumns(Desk desk, BiFunction<Request, ImportPlan, Reply> shown) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.files = new PendingFiles(benchleaf.workspace().folder().resolve("incoming"));
        this.shown = shown;
    }

    /// One column of the file.
    public record Row(String heading, String sample, String field, String unit) {}

    Reply begin(Request request, Upload upload) {
        String name = upload.name();
        String id = files.keep(request.who().name(), upload);
        Path file = files.find(id, request.who().name()).orElseThrow();
        ColumnMap proposed = benchleaf.imports().propose(file, Optional.empty(), "proposed");
        return page(request, id, file, proposed, name.substring(0, Math.min(200, name.length())), "", "");
    }

    private Reply page(
            Request request, String id, Path file, ColumnMap map, String source, String name, String trouble) {
        List<List<String>> sample = benchleaf.imports().sample(file, SAMPLE);
        List<Row> rows = new ArrayList<>();
        for (int at = 0; at < sample.getFirst().size(); at++) {
            int column = at;
            String heading = sample.getFirst().get(at);
            Optional<Column> known = map.columns().stream()
                    .filter(one -> one.headings().contains(heading))
                    .findFirst();
            if (!heading.isBlank()) {
                rows.add(new Row(
                        heading,
                        sample.stream()
                                .skip(1)
                                .map(row -> column < row.size() ? cut(row.get(column)) : "")
                                .filter(cell -> !cell.isBlank())
                                .collect(Collectors.joining(" · ")),
                        known.map(Column::field).orElse(""),
                        known.flatMap(Column::unit).orElse("")));
            }
        }
        return desk.page(
                request,
                "import-columns",
                "desk.import.columns.title",
                Map.of(
                        "id", id,
                        "rows", rows,
                        "kind", map.rows().name().toLowerCase(Locale.ROOT),
                        "fields", ColumnMaps.fields(map.rows()),
                        "units", ColumnMaps.units(),
                        "source", source,
                        "name", name),
                trouble);
    }

    private static String cut(String cell) {
        return cell.length() > LONGEST ? cell.substring(0, LONGEST) + "…" : cell;
    }

    /// What the columns are, as the form tells it.
    ///
    /// @param gone answers when the file is not there any more
    Reply told(Request request, BiFunction<Request, String, Reply> gone) {
        String id = Desk.field(request, "id");
        Optional<Path> file = files.find(id, request.who().name());
        if (file.isEmpty()) {
            return gone.apply(request, desk.wording().problem(Problem.of("desk.import.gone", "")))
                    .withStatus(422);
        }
        String source = Desk.field(request, "source");
        String name = Desk.field(request, "name");
        ColumnMap map = map(request, source, name);
        try {
            return Desk.attempt(
                    () -> planned(request, file.get(), map, name),
                    desk.wording(),
                    trouble -> page(request, id, file.get(), map, source, name, trouble)
                            .withStatus(422));
        } catch (SheetException unreadable) {
            return page(
                            request,
                            id,
                            file.get(),
                            map,
                            source,
                            name,
                            desk.wording().problem(unreadable.problem()))
                    .withStatus(422);
        }
    }

    private Reply planned(Request request, Path file, ColumnMap map, String name) {
        if (map.columns().isEmpty()) {
            throw Desk.refusal("desk.import.columns", "");
        }
        // what is told must be what a saved map could say
        switch (MapFile.read(MapFile.write(map))) {
            case Reading.Read<ColumnMap> sound -> {}
            case Reading.Refused<ColumnMap>(Problem problem) -> throw new Refusal(problem);
        }
        ImportService imports = benchleaf.imports();
        ImportPlan plan = imports.plan(file, map);
        if (!name.isEmpty()) {
            imports.maps().save(map, name, false);
            benchleaf.accounts().wrote(desk.actor(request), "map.saved", name);
        }
        return shown.apply(request, plan);
    }

    private static ColumnMap map(Request request, String source, String name) {
        RowKind rows = Desk.field(request, "kind").equals("stock") ? RowKind.STOCK : RowKind.PLANTS;
        List<String> headings = request.forms("heading");
        List<String> fields = request.forms("field");
        List<String> units = request.forms("unit");
        List<Column> columns = new ArrayList<>();
        Set<String> passedOver = new HashSet<>();
        for (int at = 0; at < headings.size() && at < fields.size(); at++) {
            String field = fields.get(at);
            if (!ColumnMaps.fields(rows).contains(field)) {
                passedOver.add(headings.get(at));
            } else {
                Column column = Column.of(headings.get(at), field);
                String unit = at < units.size() ? units.get(at) : "";
                columns.add(ColumnMaps.units().contains(unit) ? column.withUnit(unit) : column);
            }
        }
        return new ColumnMap(
                name.isEmpty() ? "proposed" : name,
                rows,
                ImportPlan.Rank.REFERENCE,
                source.isEmpty() ? Optional.empty() : Optional.of(new Source(source)),
                columns,
                passedOver);
    }
}
