package org.benchleaf.app.web.staff;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PressOutcome;
import org.benchleaf.app.service.PrintJob;
import org.benchleaf.app.service.PrintJobs;
import org.benchleaf.app.service.PrintTask;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintFinding;
import org.benchleaf.shared.code.PlantKey;

/// The print desk: what, on which paper; the first sheet as it will look, what should be put right; then the file. One
/// form, which carries everything that was chosen.
final class PrintPages {
    private static final Access PRINT = new Access.SignedIn(Right.PRINT);
    private static final long LARGEST = 4L * 1024 * 1024;
    /// How soon somebody who waits sees how far it is.
    private static final String AGAIN_SECONDS = "2";

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final PrintPicks picks;
    private final PrintOptions options;
    private final PrintView view;
    private final PrintJobs jobs;

    PrintPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.picks = new PrintPicks(benchleaf);
        this.options = new PrintOptions(benchleaf);
        this.view = new PrintView(benchleaf, options);
        this.jobs = new PrintJobs(benchleaf.workspace().folder());
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/print", PRINT, Keeping.NEVER, Headers.PAGE, this::open),
                Route.post("/desk/print", PRINT, Headers.PAGE, this::compose).upTo(LARGEST),
                Route.get("/desk/print/job/{id}", PRINT, Keeping.NEVER, Headers.PAGE, this::job),
                Route.get("/desk/print/job/{id}/file", PRINT, Keeping.NEVER, Headers.FILE, this::file));
    }

    /// `?plant=KEY`, once or more, begins with these.
    private Reply open(Request request) {
        List<PrintForm.Line> lines = request.queries("plant").stream()
                .limit(PrintForm.MOST_LINES)
                .flatMap(text -> PrintForm.Line.read(text, "").stream())
                .toList();
        return page(request, PrintForm.empty().with(lines), "");
    }

    private Reply compose(Request request) {
        PrintForm sent = PrintForm.of(request);
        return Desk.attempt(
                () -> {
                    PrintForm form = sent.with(picks.asked(sent, request.upload("file")));
                    return request.form("make").isPresent() ? make(request, form) : page(request, form, "");
                },
                desk.wording(),
                trouble -> page(request, sent, trouble).withStatus(422));
    }

    private Reply page(Request request, PrintForm form, String trouble) {
        Map<PlantKey, PlantRecord> plants = view.plants(form);
        Map<String, Object> model = new HashMap<>(view.model(form, plants));
        PrintView.Sight sight = view.sight(form, plants);
        model.put("sight", sight);
        Reply page =
                desk.page(request, "print", "desk.way.print", model, trouble.isEmpty() ? sight.trouble() : trouble);
        return sight.trouble().isEmpty() ? page : page.withStatus(422);
    }

    private Reply make(Request request, PrintForm form) {
        PrintTask task = options.task(form, view.plants(form));
        if (task.wanted().isEmpty() && !(task.document() instanceof PrintTask.Document.Availability)) {
            throw Desk.refusal("print.nothing", "");
        }
        String who = request.who().name();
        PrintJob job =
                jobs.start(who, (progress, file) -> benchleaf.printTasks().print(task, who, progress, file));
        benchleaf
                .accounts()
                .wrote(desk.actor(request), "printed", desk.wording().text("desk.print.doc." + form.field("doc")));
        return Reply.seeOther("/desk/print/job/" + job.id());
    }

    private Optional<PrintJob> asked(Request request) {
        return jobs.find(request.part("id"), request.who().name());
    }

    private Reply job(Request request) {
        Optional<PrintJob> asked = asked(request);
        if (asked.isEmpty()) {
            return Reply.missing();
        }
        PrintJob job = asked.get();
        Wording words = desk.wording();
        List<PrintFinding> findings = job.outcome().map(PressOutcome::findings).orElse(List.of());
        Reply page = desk.page(
                request,
                "print-job",
                "desk.print.job",
                Map.of(
                        "runs",
                        job.runs(),
                        "pages",
                        words.text("desk.print.pages", Map.of("pages", words.count(job.written()))),
                        "file",
                        job.hasPages() ? "/desk/print/job/" + job.id() + "/file" : "",
                        "findings",
                        view.findings(findings),
                        "elsewhere",
                        benchleaf.otherBases()),
                job.refused().map(words::problem).orElse(""));
        return job.runs() ? page.with("Refresh", AGAIN_SECONDS) : page;
    }

    private Reply file(Request request) {
        return asked(request)
                .filter(PrintJob::hasPages)
                .map(job -> {
                    try {
                        return Reply.of("application/pdf", Files.readAllBytes(job.file()))
                                .download("benchleaf.pdf");
                    } catch (IOException gone) {
                        throw new UncheckedIOException(gone);
                    }
                })
                .orElseGet(Reply::missing);
    }
}
