package org.benchleaf.app.web.walk;

import com.microsoft.playwright.options.Cookie;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Shop;
import org.benchleaf.app.browser.Sight;
import org.benchleaf.app.web.Routes;
import org.benchleaf.app.web.route.Guard;
import org.benchleaf.app.web.route.Identity;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Router;

/// A shop whose server can be taken away and come back at the same address, and a seller who is signed
/// in at it.
final class WalkShop implements AutoCloseable {
    /// Facts from memory; places are invented.
    static final String PLANTS = """
            name,common_names,synonyms,life_form,foliage,hardiness,height,exposure,fall_color,fall_months,bloom,source
            Leucothoe fontanesiana,drooping leucothoe,Leucothoe catesbaei,shrub,evergreen,5-8,3-6 ft,part shade; full shade,,,May,from memory
            Leucothoe fontanesiana 'Rainbow',,,,,,3-4 ft,,,,,from memory
            Coreopsis verticillata,threadleaf coreopsis,,perennial,deciduous,3-9,2-3 ft,full sun,,,Jun-Sep,from memory
            Coreopsis verticillata 'Moonbeam',,,,,,18-24 in,,,,,from memory
            Itea virginica,Virginia sweetspire,,shrub,deciduous,5-9,3-5 ft,full sun; part shade,red #B8272F,Oct-Nov,Jun,from memory
            Itea virginica 'Little Henry',,,,,,2-3 ft,,,,,from memory
            """;

    static final String STOCK = """
            lot,name,size,place,count,price
            S0001,Leucothoe fontanesiana 'Rainbow',#3,B4-11,60,$18.50
            S0002,Coreopsis verticillata 'Moonbeam',#1,B4-12,120,$7.50
            S0003,Itea virginica,#3,B4-13,48,$18.50
            S0004,Itea virginica,#5,C1-02,22,$28.50
            S0005,Itea virginica 'Little Henry',#3,B4-14,35,$19.50
            """;

    private static final String COOKIE = "walker";

    private final Path folder;
    private Benchleaf benchleaf;
    private Router router;
    private final int port;

    private WalkShop(Path folder) {
        this.folder = folder;
        this.benchleaf = Benchleaf.open(folder, Clock.systemDefaultZone());
        this.router = start(benchleaf, 0);
        this.port = router.port();
    }

    static WalkShop open(Path parent, String... lists) {
        try (Shop made = Shop.with(parent, "", lists)) {
            return new WalkShop(made.folder());
        }
    }

    private static Router start(Benchleaf benchleaf, int port) {
        return Router.start(
                Routes.of(benchleaf),
                new OneSeller(),
                (request, status, problem) -> Reply.page("trouble " + status).withStatus(status),
                benchleaf.settings().base(),
                "127.0.0.1",
                port);
    }

    /// As when the machine is switched off.
    void stopServer() {
        router.close();
        benchleaf.close();
    }

    void startServer() {
        benchleaf = Benchleaf.open(folder, Clock.systemDefaultZone());
        router = start(benchleaf, port);
    }

    Benchleaf benchleaf() {
        return benchleaf;
    }

    Path folder() {
        return folder;
    }

    String at(String path) {
        // the browser takes this name for a safe place, as it would an address with TLS
        return "http://localhost:" + port + path;
    }

    int count(String lot) {
        return benchleaf.ledger().lot(lot).orElseThrow().count();
    }

    void signIn(Sight sight) {
        sight.context().addCookies(List.of(new Cookie(COOKIE, "Ann").setUrl(at("/"))));
    }

    @Override
    public void close() {
        stopServer();
    }

    /// Whoever has the cookie may walk.
    private static final class OneSeller implements Guard {
        @Override
        public Optional<Reply> refused(Request request) {
            return Optional.empty();
        }

        @Override
        public Optional<Identity> bySession(Request request) {
            return request.cookie(COOKIE)
                    .map(name ->
                            new Identity(name, Set.of(Right.LOOK, Right.WALK, Right.EDIT), "form-token-of-" + name));
        }

        @Override
        public Optional<Identity> byToken(Request request, String token) {
            return Optional.empty();
        }

        @Override
        public Reply signIn(Request request) {
            return Reply.seeOther("/staff/sign-in");
        }
    }
}
