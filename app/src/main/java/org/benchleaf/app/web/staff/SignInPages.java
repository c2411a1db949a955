package org.benchleaf.app.web.staff;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.accounts.Accounts;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.accounts.SignIn;
import org.benchleaf.catalog.accounts.StaffMember;

/// Signing in and out.
final class SignInPages {
    /// Where one may be led after signing in: an address of this server, never one of another.
    private static final Pattern OURS = Pattern.compile("/(?:desk|staff|walk)(?:[/?][A-Za-z0-9/?&=._%+-]*)?");

    private static final Access SIGNED_IN = new Access.SignedIn(Right.SELF);

    /// Where customers go.
    private static final String SHOP_WINDOW = "/available";

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final Accounts accounts;

    SignInPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.accounts = benchleaf.accounts();
    }

    List<Route> routes() {
        return List.of(
                Route.get("/staff/sign-in", Access.DOOR, Keeping.NEVER, Headers.PAGE, this::door),
                Route.post("/staff/sign-in", Access.DOOR, Headers.PAGE, this::enter),
                Route.post("/staff/sign-out", SIGNED_IN, Headers.PAGE, this::leave));
    }

    private static String home(StaffMember member) {
        return member.role() == Role.CUSTOMER ? SHOP_WINDOW : "/desk";
    }

    private Reply door(Request request) {
        if (request.identity().isPresent()) {
            return Reply.seeOther(request.who().may(Right.LOOK) ? "/desk" : SHOP_WINDOW);
        }
        return door("", request.query("next").orElse(""), "");
    }

    private Reply door(String name, String next, String trouble) {
        return desk.open("sign-in", "desk.sign-in", Map.of("name", name, "next", next), trouble);
    }

    private Reply enter(Request request) {
        StaffLine line = StaffGuard.line(request, benchleaf).orElseThrow();
        String name = Desk.field(request, "name");
        String next = request.form("next").orElse("");
        String password = request.form("password").orElse("");
        SignIn outcome = password.length() > 1000
                ? new SignIn.Wrong()
                : accounts.signIn(
                        name,
                        password.toCharArray(),
                        line.address(),
                        request.header("User-Agent").orElse(""));
        return switch (outcome) {
            case SignIn.Done(String token, var member) -> {
                // whoever sat here before is not signed in any more
                StaffGuard.cookie(request, benchleaf).ifPresent(this::end);
                yield Reply.seeOther(OURS.matcher(next).matches() ? next : home(member))
                        .with(new Reply.Cookie(
                                StaffGuard.cookieName(line.secure()), token, Accounts.LONGEST, line.secure()));
            }
            case SignIn.Wrong() ->
                door(name, next, desk.wording().text("desk.sign-in.wrong")).withStatus(401);
            case SignIn.Held(Duration pause) ->
                door(name, next, desk.wording().text("desk.sign-in.held", Map.of("wait", wait(pause))))
                        .withStatus(429)
                        .with("Retry-After", Long.toString(pause.toSeconds() + 1));
        };
    }

    private String wait(Duration pause) {
        long seconds = pause.toSeconds() + 1;
        return seconds < 100
                ? desk.wording().text("desk.wait.seconds", Map.of("count", Long.toString(seconds)))
                : desk.wording().text("desk.wait.minutes", Map.of("count", Long.toString(seconds / 60 + 1)));
    }

    private void end(String token) {
        accounts.session(token)
                .ifPresent(session -> accounts.signOut(
                        session.member().name(),
                        Optional.of(session.id()),
                        new Actor(session.member().name(), session.from())));
    }

    private Reply leave(Request request) {
        boolean secure =
                StaffGuard.line(request, benchleaf).map(StaffLine::secure).orElse(false);
        StaffGuard.cookie(request, benchleaf).ifPresent(this::end);
        return Reply.seeOther("/staff/sign-in")
                .with(new Reply.Cookie(StaffGuard.cookieName(secure), "", Duration.ZERO, secure));
    }
}
