package org.benchleaf.app.web.staff;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.accounts.Accounts;
import org.benchleaf.catalog.accounts.SignIn;

/// What everybody looks after alone: devices, password, tokens.
final class MyPage {
    private static final Access SELF = new Access.SignedIn(Right.SELF);

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final Accounts accounts;

    MyPage(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.accounts = benchleaf.accounts();
    }

    List<Route> routes() {
        return List.of(
                Route.get("/staff/me", SELF, Keeping.NEVER, Headers.PAGE, request -> page(request, "", "")),
                Route.post("/staff/me/sign-out-everywhere", SELF, Headers.PAGE, this::signOutEverywhere),
                Route.post("/staff/me/password", SELF, Headers.PAGE, this::setPassword),
                Route.post("/staff/me/token", SELF, Headers.PAGE, this::makeToken),
                Route.post("/staff/me/token/remove", SELF, Headers.PAGE, this::removeToken));
    }

    public record Device(String device, String from, String since, String seen) {}

    public record Token(String id, String label, String ends, String used) {}

    /// @param fresh a token just made, which is shown this once
    private Reply page(Request request, String fresh, String trouble) {
        String name = request.who().name();
        List<Device> devices = accounts.sessions(name).stream()
                .map(session ->
                        new Device(session.device(), session.from(), time(session.startedAt()), time(session.seenAt())))
                .toList();
        List<Token> tokens = accounts.tokens(name).stream()
                .map(token -> new Token(
                        token.id(),
                        token.label(),
                        time(token.endsAt()),
                        token.usedAt().map(this::time).orElse("")))
                .toList();
        return desk.page(
                request,
                "me",
                "desk.me",
                Map.of("devices", devices, "tokens", tokens, "fresh", fresh, "role", role(name)),
                trouble);
    }

    private String role(String name) {
        return accounts.find(name)
                .map(member -> desk.wording().term(member.role()))
                .orElse("");
    }

    private String time(Instant moment) {
        return desk.wording().time(LocalDateTime.ofInstant(moment, benchleaf.zone()));
    }

    private Reply signOutEverywhere(Request request) {
        accounts.signOut(request.who().name(), Optional.empty(), desk.actor(request));
        return Reply.seeOther("/staff/sign-in");
    }

    /// Needs the old password: a desk left open must not give the account away.
    private Reply setPassword(Request request) {
        String name = request.who().name();
        String once = request.form("new").orElse("");
        return Desk.attempt(
                () -> {
                    if (!once.equals(request.form("again").orElse(""))) {
                        throw Desk.refusal("staff.password.differs", name);
                    }
                    SignIn outcome = accounts.signIn(
                            name,
                            request.form("old").orElse("").toCharArray(),
                            desk.actor(request).from(),
                            request.header("User-Agent").orElse(""));
                    if (!(outcome instanceof SignIn.Done)) {
                        throw Desk.refusal("staff.password.old", name);
                    }
                    accounts.setPassword(name, once.toCharArray(), desk.actor(request));
                    return Reply.seeOther("/staff/sign-in");
                },
                desk.wording(),
                trouble -> page(request, "", trouble).withStatus(422));
    }

    private Reply makeToken(Request request) {
        return Desk.attempt(
                () -> page(
                        request,
                        accounts.makeToken(
                                request.who().name(),
                                Desk.field(request, "label"),
                                Duration.ofDays(365),
                                desk.actor(request)),
                        ""),
                desk.wording(),
                trouble -> page(request, "", trouble).withStatus(422));
    }

    private Reply removeToken(Request request) {
        accounts.removeToken(request.who().name(), Desk.field(request, "id"), desk.actor(request));
        return Reply.seeOther("/staff/me?done=token-removed");
    }
}
