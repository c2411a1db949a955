package org.benchleaf.app.web.staff;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.ListReport;
import org.benchleaf.app.service.ListTable;
import org.benchleaf.app.service.PlantAmount;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.export.CatalogExport;
import org.benchleaf.catalog.lists.ListLine;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;
import org.benchleaf.shared.stock.StockSize;

/// Plant lists of jobs: begun, filled, checked as a whole, exported and printed for the client.
final class ListPages {
    private static final Access LOOK = new Access.SignedIn(Right.LOOK);
    private static final Access CHANGE = new Access.SignedIn(Right.WALK);
    private static final int LONGEST = 100;

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final ListView view;

    ListPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.view = new ListView(benchleaf);
    }

    List<Route> routes() {
        return List.of(
                Route.get(
                        "/desk/lists",
                        LOOK,
                        Keeping.NEVER,
                        Headers.PAGE,
                        request -> names(request, ListForm.empty(), "")),
                Route.post("/desk/lists", CHANGE, Headers.PAGE, this::begin),
                Route.get("/desk/lists/list", LOOK, Keeping.NEVER, Headers.PAGE, this::open),
                Route.post("/desk/lists/list", CHANGE, Headers.PAGE, this::change),
                Route.get("/desk/lists/export", LOOK, Keeping.NEVER, Headers.FILE, this::export),
                Route.get("/desk/lists/pack", LOOK, Keeping.NEVER, Headers.FILE, this::pack));
    }

    static String path(String name) {
        return "/desk/lists/list?list=" + PlantSearch.encoded(name);
    }

    private Reply names(Request request, ListForm form, String trouble) {
        List<ListView.Choice> lists = benchleaf.lists().names().stream()
                .map(name -> new ListView.Choice(path(name), name))
                .toList();
        return desk.page(
                request,
                "lists",
                "desk.way.lists",
                Map.of(
                        "lists", lists,
                        "form", form.all(),
                        "lights", view.choices(Arrays.asList(Exposure.values())),
                        "soils", view.choices(Arrays.asList(Moisture.values())),
                        "may", request.who().may(Right.WALK)),
                trouble);
    }

    private Reply begin(Request request) {
        ListForm form = ListForm.of(request);
        return Desk.attempt(
                () -> {
                    String name = form.field("name");
                    if (name.isEmpty() || name.length() > LONGEST) {
                        throw Desk.refusal("list.name", name);
                    }
                    PlantList list = benchleaf.lists().save(PlantList.empty(name, form.site()));
                    return Reply.seeOther(path(list.name()));
                },
                desk.wording(),
                trouble -> names(request, form, trouble).withStatus(422));
    }

    private Optional<PlantList> asked(Request request) {
        return request.query("list").flatMap(benchleaf.lists()::find);
    }

    private Reply open(Request request) {
        return asked(request)
                .map(list -> page(request, list, ListForm.empty().at(list.site()), ""))
                .orElseGet(Reply::missing);
    }

    private Reply page(Request request, PlantList list, ListForm form, String trouble) {
        Map<String, Object> model =
                new HashMap<>(view.model(report(list, true), form, request.who().may(Right.WALK)));
        model.put("prints", request.who().may(Right.PRINT));
        return desk.page(request, "list", "desk.list", model, trouble);
    }

    private ListReport report(PlantList list, boolean checked) {
        return benchleaf.listService().report(list, benchleaf.today(), checked);
    }

    private Reply change(Request request) {
        String name = Desk.field(request, "list");
        Optional<PlantList> known = benchleaf.lists().find(name);
        if (known.isEmpty()) {
            return Reply.missing();
        }
        ListForm form = ListForm.of(request);
        return Desk.attempt(
                () -> changed(request, known.get(), form),
                desk.wording(),
                trouble -> page(
                                request,
                                known.get(),
                                Desk.field(request, "do").equals("site")
                                        ? form
                                        : form.at(known.get().site()),
                                trouble)
                        .withStatus(422));
    }

    private Reply changed(Request request, PlantList list, ListForm form) {
        if (!Desk.field(request, "version").equals(Integer.toString(list.version()))) {
            throw Desk.refusal("list.stale", list.name());
        }
        String what = Desk.field(request, "do");
        switch (what) {
            case "add" -> benchleaf.lists().save(added(list, form));
            case "site" -> benchleaf.lists().save(list.at(form.site()));
            case "quantity" -> benchleaf.lists().save(list.replacing(recounted(request, list, form)));
            case "remove" ->
                benchleaf.lists().save(list.without(line(request, list).number()));
            case "delete" -> {
                benchleaf.lists().delete(list.name());
                return Reply.seeOther("/desk/lists?done=list-deleted");
            }
            default -> throw Desk.refusal("desk.form", "do");
        }
        return Reply.seeOther(path(list.name()) + "&done=list-" + what);
    }

    private PlantList added(PlantList list, ListForm form) {
        if (form.field("plant").isEmpty()) {
            throw Desk.refusal("desk.list.plant", "");
        }
        PlantRecord plant = benchleaf.plantFinder().find(form.field("plant"));
        Optional<StockSize> size = Desk.present(form.field("size")).map(text -> ListForm.ok(StockSize.read(text)));
        PlantAmount many = form.amount(desk.wording());
        return list.with(
                number -> new ListLine(number, plant.key(), size, many.plants(), many.worked(), form.field("note")));
    }

    private static ListLine recounted(Request request, PlantList list, ListForm form) {
        ListLine line = line(request, list);
        int quantity = ListForm.number(form.field("quantity"), "desk.number");
        // how another number was worked out says nothing of this one
        String worked = quantity == line.quantity() ? line.worked() : "";
        return new ListLine(line.number(), line.plant(), line.size(), quantity, worked, line.note());
    }

    private static ListLine line(Request request, PlantList list) {
        String number = Desk.field(request, "line");
        return list.lines().stream()
                .filter(line -> Integer.toString(line.number()).equals(number))
                .findFirst()
                .orElseThrow(() -> new Refusal(Problem.of("list.line", number).with("list", list.name())));
    }

    /// `as=csv` or `as=xlsx`.
    private Reply export(Request request) {
        CatalogExport.Format format = request.query("as").filter("xlsx"::equals).isPresent()
                ? CatalogExport.Format.XLSX
                : CatalogExport.Format.CSV;
        return asked(request)
                .map(list -> {
                    ByteArrayOutputStream out = new ByteArrayOutputStream();
                    try {
                        CatalogExport.table(
                                format,
                                list.name(),
                                ListTable.HEADINGS,
                                new ListTable(desk.wording()).rows(report(list, true)),
                                out);
                    } catch (IOException impossible) {
                        throw new UncheckedIOException(impossible);
                    }
                    return format == CatalogExport.Format.CSV
                            ? Reply.of("text/csv; charset=utf-8", out.toByteArray())
                                    .download(list.name() + ".csv")
                            : Reply.of(
                                            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
                                            out.toByteArray())
                                    .download(list.name() + ".xlsx");
                })
                .orElseGet(Reply::missing);
    }

    /// The list for its client, a sheet for each plant behind it.
    private Reply pack(Request request) {
        return asked(request)
                .filter(list -> !list.lines().isEmpty())
                .map(list -> {
                    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
                    var documents = benchleaf.documents(benchleaf.style());
                    benchleaf
                            .printer()
                            .listPack(
                                    documents.assembler().pack(report(list, false), benchleaf.now()),
                                    benchleaf.settings().choices().look().paper(),
                                    benchleaf.style(),
                                    pdf);
                    return Reply.of("application/pdf", pdf.toByteArray()).download(list.name() + ".pdf");
                })
                .orElseGet(Reply::missing);
    }
}
