package org.benchleaf.app.web.staff;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Guard;
import org.benchleaf.app.web.route.Identity;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.catalog.accounts.Accounts;
import org.benchleaf.catalog.accounts.Actor;

/// Knows staff by the cookie of their session, and their programs by tokens.
public final class StaffGuard implements Guard {
    private final Accounts accounts;
    private final Benchleaf benchleaf;
    private final Desk desk;

    public StaffGuard(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.accounts = benchleaf.accounts();
        this.desk = new Desk(benchleaf);
    }

    @Override
    public Optional<Reply> refused(Request request) {
        return line(request, benchleaf).isPresent()
                ? Optional.empty()
                : Optional.of(
                        desk.message(benchleaf.wording().text("desk.line")).withStatus(403));
    }

    static Optional<StaffLine> line(Request request, Benchleaf benchleaf) {
        return StaffLine.of(
                request, benchleaf.settings().base(), benchleaf.settings().proxy());
    }

    @Override
    public Optional<Identity> bySession(Request request) {
        return cookie(request, benchleaf)
                .flatMap(token -> accounts.session(token)
                        .map(session -> new Identity(
                                session.member().name(),
                                StaffRights.of(session.member().role()),
                                accounts.formToken(token))));
    }

    /// The token of the session, by the cookie that the line allows.
    static Optional<String> cookie(Request request, Benchleaf benchleaf) {
        return line(request, benchleaf)
                .flatMap(line -> request.cookie(cookieName(line.secure())))
                .filter(token -> !token.isEmpty());
    }

    /// A cookie of this prefix is taken by browsers over TLS only and from no other host (RFC 6265bis,
    /// 4.1.3.2).
    static String cookieName(boolean secure) {
        return secure ? "__Host-benchleaf" : "benchleaf";
    }

    @Override
    public Optional<Identity> byToken(Request request, String token) {
        return accounts.token(token)
                .map(known -> new Identity(
                        known.member().name(), StaffRights.of(known.member().role()), ""));
    }

    /// Who acts, for the audit log and the ledger.
    static Actor actor(Request request, Benchleaf benchleaf) {
        return new Actor(
                request.who().name(),
                line(request, benchleaf).map(StaffLine::address).orElse(request.address()));
    }

    @Override
    public Reply signIn(Request request) {
        if (request.wantsData()) {
            return Reply.status(401);
        }
        return Reply.seeOther("/staff/sign-in?next=" + URLEncoder.encode(request.path(), StandardCharsets.UTF_8));
    }
}
