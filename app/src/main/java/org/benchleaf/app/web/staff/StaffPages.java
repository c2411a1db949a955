package org.benchleaf.app.web.staff;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.accounts.Accounts;
import org.benchleaf.catalog.accounts.AuditLine;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.content.PriceTier;
import org.benchleaf.shared.Term;

/// Who may sign in and as what, and the log of what they did; for owners.
final class StaffPages {
    private static final Access OWN = new Access.SignedIn(Right.OWN);
    private static final int LINES = 100;
    /// Stands between a role and the tier of a customer.
    private static final String TIER = ": ";

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final Accounts accounts;

    StaffPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.accounts = benchleaf.accounts();
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/staff", OWN, Keeping.NEVER, Headers.PAGE, request -> page(request, "")),
                Route.post("/desk/staff", OWN, Headers.PAGE, this::add),
                Route.post("/desk/staff/role", OWN, Headers.PAGE, this::change),
                Route.get("/desk/staff/log", OWN, Keeping.NEVER, Headers.PAGE, this::log));
    }

    /// @param role its word in the catalog; empty for one who has left
    public record Member(String name, String role, boolean active, String since) {}

    public record Choice(String value, String label) {}

    private Reply page(Request request, String trouble) {
        List<Member> members = accounts.staff().stream()
                .map(member -> new Member(
                        member.name(),
                        member.role().term()
                                + member.tier().map(tier -> TIER + tier).orElse(""),
                        member.active(),
                        desk.wording().date(LocalDate.ofInstant(member.since(), benchleaf.zone()))))
                .toList();
        List<Choice> roles = new ArrayList<>();
        for (Role role : Role.values()) {
            roles.add(choice(role, role.term(), desk.wording().text("desk.role." + role.name())));
        }
        for (String tier : tiers()) {
            roles.add(choice(
                    Role.CUSTOMER,
                    Role.CUSTOMER.term() + TIER + tier,
                    desk.wording().text("desk.role.tier", Map.of("tier", tier))));
        }
        return desk.page(request, "staff", "desk.way.staff", Map.of("members", members, "roles", roles), trouble);
    }

    private Choice choice(Role role, String value, String may) {
        return new Choice(value, desk.wording().term(role) + ": " + may);
    }

    /// Those of the shop, and those it has given up that somebody still has.
    private List<String> tiers() {
        return Stream.concat(
                        benchleaf.settings().choices().tiers().stream().map(PriceTier::name),
                        accounts.staff().stream().flatMap(member -> member.tier().stream()))
                .distinct()
                .toList();
    }

    private Reply add(Request request) {
        return Desk.attempt(
                () -> {
                    char[] password = request.form("password").orElse("").toCharArray();
                    String name = Desk.field(request, "name");
                    if (role(request) == Role.CUSTOMER) {
                        accounts.addCustomer(name, tier(request), password, desk.actor(request));
                    } else {
                        accounts.add(name, role(request), password, desk.actor(request));
                    }
                    return Reply.seeOther("/desk/staff?done=staff-added");
                },
                desk.wording(),
                trouble -> page(request, trouble).withStatus(422));
    }

    private Reply change(Request request) {
        return Desk.attempt(
                () -> {
                    boolean leaves = Desk.field(request, "role").equals("left");
                    String name = Desk.field(request, "name");
                    Role role = leaves
                            ? accounts.find(name)
                                    .orElseThrow(() -> Desk.refusal("staff.unknown", name))
                                    .role()
                            : role(request);
                    if (role == Role.CUSTOMER && !leaves) {
                        accounts.changeCustomer(name, tier(request), desk.actor(request));
                    } else {
                        accounts.change(name, role, !leaves, desk.actor(request));
                    }
                    return Reply.seeOther("/desk/staff?done=staff-changed");
                },
                desk.wording(),
                trouble -> page(request, trouble).withStatus(422));
    }

    private Optional<String> tier(Request request) {
        return Optional.of(Desk.field(request, "role"))
                .filter(value -> value.startsWith(Role.CUSTOMER.term() + TIER))
                .map(value -> value.substring(value.indexOf(TIER) + TIER.length()))
                .map(tier -> tiers().stream()
                        .filter(tier::equals)
                        .findFirst()
                        .orElseThrow(() -> Desk.refusal("desk.form", "role")));
    }

    private static Role role(Request request) {
        return Term.read(Role.class, Desk.field(request, "role").split(TIER, 2)[0])
                .toOptional()
                .orElseThrow(() -> Desk.refusal("desk.form", "role"));
    }

    public record LogRow(String when, String who, String from, String what, String about) {}

    private Reply log(Request request) {
        long before = Long.MAX_VALUE;
        try {
            before = Long.parseLong(request.query("before").orElse(Long.toString(before)));
        } catch (NumberFormatException typed) {
            before = Long.MAX_VALUE;
        }
        List<AuditLine> lines = accounts.log(before, LINES);
        List<LogRow> rows = lines.stream()
                .map(line -> new LogRow(
                        desk.wording().time(LocalDateTime.ofInstant(line.at(), benchleaf.zone())),
                        line.actor().who(),
                        line.actor().from(),
                        act(line.act()),
                        line.about()))
                .toList();
        String earlier = lines.size() < LINES
                ? ""
                : "/desk/staff/log?before=" + lines.getLast().number();
        return desk.page(request, "log", "desk.staff.log", Map.of("rows", rows, "earlier", earlier));
    }

    /// An act of an older or newer program stands as it is written.
    private String act(String act) {
        String word = "audit." + act;
        return desk.wording().keys().contains(word) ? desk.wording().text(word) : act;
    }
}
