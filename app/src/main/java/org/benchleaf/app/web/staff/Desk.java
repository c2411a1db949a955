package org.benchleaf.app.web.staff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.web.route.Identity;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.catalog.CatalogException;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.content.Wording;
import org.benchleaf.render.DeskPages;
import org.benchleaf.render.page.DeskFrame;
import org.benchleaf.shared.Problem;

/// What all pages of staff need: the frame around them, and how they say what was done or why not.
final class Desk {
    /// Pages that everybody on the desk finds above every page, in the order of a working day.
    private record Place(String path, String word, Right right) {}

    private static final List<Place> PLACES = List.of(
            new Place("/desk", "desk.way.home", Right.LOOK),
            new Place("/desk/plants", "desk.way.plants", Right.LOOK),
            new Place("/desk/stock", "desk.way.stock", Right.LOOK),
            new Place("/desk/call", "desk.way.call", Right.LOOK),
            new Place("/desk/lists", "desk.way.lists", Right.LOOK),
            new Place("/desk/print", "desk.way.print", Right.PRINT),
            new Place("/desk/import", "desk.way.import", Right.EDIT),
            new Place("/desk/shop", "desk.way.shop", Right.OWN),
            new Place("/desk/staff", "desk.way.staff", Right.OWN));

    private final Benchleaf benchleaf;
    private final Wording wording;
    private final DeskPages pages;

    Desk(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
        this.pages = benchleaf.deskPages();
    }

    Benchleaf benchleaf() {
        return benchleaf;
    }

    Wording wording() {
        return wording;
    }

    /// A page of somebody who is signed in.
    ///
    /// @param title a word
    Reply page(Request request, String template, String title, Map<String, ?> model) {
        return page(request, template, title, model, "");
    }

    /// The same, saying why something was not done.
    Reply page(Request request, String template, String title, Map<String, ?> model, String trouble) {
        return Reply.page(pages.page(template, frame(request, wording.text(title), trouble), model));
    }

    private DeskFrame frame(Request request, String title, String trouble) {
        Identity who = request.who();
        List<DeskFrame.Way> ways = new ArrayList<>();
        for (Place place : PLACES) {
            if (who.may(place.right())) {
                ways.add(new DeskFrame.Way(place.path(), wording.text(place.word()), isHere(place.path(), request)));
            }
        }
        return new DeskFrame(
                benchleaf.settings().shopName(),
                title,
                who.name(),
                who.formToken(),
                ways,
                done(request),
                trouble,
                List.of());
    }

    private static boolean isHere(String path, Request request) {
        return path.equals("/desk")
                ? request.path().equals(path)
                : request.path().equals(path) || request.path().startsWith(path + "/");
    }

    /// What the last change did: a word that the address names, and nothing else an address says.
    private String done(Request request) {
        return request.query("done")
                .map(word -> "desk.done." + word)
                .filter(wording.keys()::contains)
                .map(wording::text)
                .orElse("");
    }

    /// A page of nobody.
    Reply open(String template, String title, Map<String, ?> model, String trouble) {
        DeskFrame frame = new DeskFrame(
                benchleaf.settings().shopName(), wording.text(title), "", "", List.of(), "", trouble, List.of());
        return Reply.page(pages.page(template, frame, model));
    }

    /// A page that says one thing.
    Reply message(String text) {
        return open("message", "desk.sign-in", Map.of("text", text), "");
    }

    /// Who acts, for the audit log.
    Actor actor(Request request) {
        return StaffGuard.actor(request, benchleaf);
    }

    /// Does something that may be refused.
    ///
    /// @param refused answers with the reason in words
    static Reply attempt(Work work, Wording wording, Refused refused) {
        try {
            return work.run();
        } catch (Refusal refusal) {
            return refused.with(wording.problem(refusal.problem()));
        } catch (CatalogException refusal) {
            return refused.with(wording.problem(refusal.problem()));
        }
    }

    interface Work {
        Reply run();
    }

    interface Refused {
        Reply with(String trouble);
    }

    /// A field of a form, without blanks around it, cut where no honest one is so long.
    static String field(Request request, String name) {
        String text = request.form(name).orElse("").strip();
        return text.substring(0, Math.min(LONGEST, text.length()));
    }

    private static final int LONGEST = 4000;

    static Refusal refusal(String key, String read) {
        return new Refusal(Problem.of(key, read));
    }

    static Optional<String> present(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
