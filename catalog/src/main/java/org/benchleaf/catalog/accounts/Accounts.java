package org.benchleaf.catalog.accounts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.AccountRefused;
import org.benchleaf.catalog.accounts.AccountStore.Credential;
import org.benchleaf.catalog.accounts.AccountStore.Failures;
import org.benchleaf.catalog.accounts.AccountStore.Note;
import org.benchleaf.catalog.accounts.AccountStore.Ruling;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// Who may sign in, who is signed in, and what was done. May be shared between threads.
public final class Accounts {
    /// A session ends when nothing was heard of it for a working day, and after a week in any case.
    public static final Duration IDLE = Duration.ofHours(14);

    public static final Duration LONGEST = Duration.ofDays(7);
    /// How long an access token opens when nothing else is said.
    public static final Duration TOKEN = Duration.ofDays(365);

    private static final Duration HEARD_OF = Duration.ofMinutes(5);
    private static final Duration KNOWN_FOR = Duration.ofDays(30);
    private static final int DEVICE = 120;

    private final AccountStore store;
    private final Clock clock;
    private final Secrets secrets = new Secrets();
    private final Passwords passwords;
    private final String nobody;

    public Accounts(AccountStore store, Clock clock, PasswordCost cost) {
        this.store = store;
        this.clock = clock;
        this.passwords = new Passwords(secrets, cost);
        this.nobody = passwords.nobody();
    }

    /// Everybody, those who have left too, by name.
    public List<StaffMember> staff() {
        return store.staff();
    }

    public Optional<StaffMember> find(String name) {
        return store.credential(StaffMember.folded(name)).map(Credential::member);
    }

    /// Adds a member of staff.
    ///
    /// @throws AccountRefused when the name cannot be one (`staff.name`) or is taken (`staff.taken`),
    ///     or the password
    ///     will not do (`password.length`, `password.simple`)
    public StaffMember add(String name, Role role, char[] password, Actor by) {
        return add(name, role, Optional.empty(), password, by);
    }

    /// Adds a customer, who sees counts and pays the prices of a tier.
    ///
    /// @param tier a name among the shop's price tiers; the catalog's prices when empty
    /// @throws AccountRefused as [#add]
    public StaffMember addCustomer(String name, Optional<String> tier, char[] password, Actor by) {
        return add(name, Role.CUSTOMER, tier, password, by);
    }

    private StaffMember add(String name, Role role, Optional<String> tier, char[] password, Actor by) {
        String good = switch (StaffMember.readName(name)) {
            case Reading.Read<String>(String read) -> read;
            case Reading.Refused<String>(Problem problem) -> throw new AccountRefused(problem);
        };
        StaffMember member = new StaffMember(good, role, tier, true, clock.instant());
        if (!store.add(
                member, passwords.store(good, password), note(by, "staff.added", good + ": " + post(role, tier)))) {
            throw new AccountRefused(Problem.of("staff.taken", good));
        }
        return member;
    }

    /// Changes what somebody may do, or lets them sign in no longer, or again.
    ///
    /// @throws AccountRefused when there is nobody of that name (`staff.unknown`), or no owner would be
    ///     left (`staff.last.owner`)
    public StaffMember change(String name, Role role, boolean active, Actor by) {
        return change(name, role, known(name).tier(), active, by);
    }

    /// Makes somebody a customer of a tier.
    ///
    /// @throws AccountRefused as [#change]
    public StaffMember changeCustomer(String name, Optional<String> tier, Actor by) {
        return change(name, Role.CUSTOMER, tier, true, by);
    }

    private static String post(Role role, Optional<String> tier) {
        return role.term() + tier.map(one -> ", " + one).orElse("");
    }

    private StaffMember change(String name, Role role, Optional<String> tier, boolean active, Actor by) {
        StaffMember old = known(name);
        StaffMember member =
                new StaffMember(old.name(), role, role == Role.CUSTOMER ? tier : Optional.empty(), active, old.since());
        String about = old.name() + ": " + (active ? post(role, member.tier()) : "-");
        if (!store.change(member, note(by, "staff.changed", about))) {
            throw new AccountRefused(Problem.of("staff.last.owner", old.name()));
        }
        return member;
    }

    /// Sets a new password; every session of its owner ends.
    public void setPassword(String name, char[] password, Actor by) {
        StaffMember member = known(name);
        store.setPassword(
                StaffMember.folded(member.name()),
                passwords.store(member.name(), password),
                note(by, "password.set", member.name()));
    }

    /// Whether the password is the member's; held off as signing in is.
    public SignIn signIn(String name, char[] password, String from, String device) {
        String folded = StaffMember.folded(name.substring(0, Math.min(DEVICE, name.length())));
        Instant now = clock.instant();
        boolean known = store.signedInFrom(folded, from, now.minus(KNOWN_FOR));
        GuessingRule rule = known ? GuessingRule.KNOWN_PLACE : GuessingRule.ACCOUNT;
        List<String> subjects =
                List.of(known ? "place:" + folded + "@" + from : "account:" + folded, "address:" + from);
        Duration wait = store.attempt(
                subjects, now.minus(GuessingRule.FORGOTTEN_AFTER), now, failures -> ruling(rule, failures, now));
        if (!wait.isZero()) {
            return new SignIn.Held(wait);
        }
        Optional<Credential> credential = store.credential(folded);
        boolean fits =
                passwords.fits(password, credential.map(Credential::password).orElse(nobody));
        if (credential.isEmpty() || !fits || !credential.get().member().active()) {
            // a name that nobody has may be a password in the wrong field, which no log must keep
            String tried = credential.map(found -> found.member().name()).orElse("");
            store.write(new Note(now, new Actor(tried, from), "sign.in.failed", ""));
            return new SignIn.Wrong();
        }
        StaffMember member = credential.get().member();
        String token = secrets.token();
        String sum = Secrets.sum(token);
        StaffSession session = new StaffSession(
                Secrets.id(sum), member, now, now, from, device.substring(0, Math.min(DEVICE, device.length())));
        store.sweep(now.minus(LONGEST), now.minus(IDLE));
        store.open(
                sum,
                session,
                subjects.getFirst(),
                subjects.getLast(),
                new Note(now, new Actor(member.name(), from), "signed.in", ""));
        return new SignIn.Done(token, member);
    }

    private static Ruling<Duration> ruling(GuessingRule rule, List<Failures> failures, Instant now) {
        Failures ofName = failures.getFirst();
        Failures ofAddress = failures.getLast();
        Duration name = rule.wait(ofName.failures(), ofName.last(), now);
        Duration address = GuessingRule.ADDRESS.wait(ofAddress.failures(), ofAddress.last(), now);
        Duration wait = name.compareTo(address) > 0 ? name : address;
        return new Ruling<>(wait, wait.isZero());
    }

    /// The session that a token opens now; empty when it ended, or its owner may no longer sign in.
    public Optional<StaffSession> session(String token) {
        String sum = Secrets.sum(token);
        Instant now = clock.instant();
        Optional<StaffSession> session = store.session(sum).filter(found -> isOpen(found, now));
        if (session.isPresent() && session.get().seenAt().plus(HEARD_OF).isBefore(now)) {
            store.seen(sum, now);
        }
        return session;
    }

    private static boolean isOpen(StaffSession session, Instant now) {
        return session.member().active()
                && session.seenAt().plus(IDLE).isAfter(now)
                && session.startedAt().plus(LONGEST).isAfter(now);
    }

    /// What pages of a session send back with every change.
    public String formToken(String sessionToken) {
        return Secrets.formToken(sessionToken);
    }

    /// Whether a page of that very session sent this.
    public boolean isFormToken(String sessionToken, String sent) {
        return Secrets.same(Secrets.formToken(sessionToken), sent);
    }

    /// The open sessions of a member, the newest first.
    public List<StaffSession> sessions(String name) {
        Instant now = clock.instant();
        return store.sessions(StaffMember.folded(name)).stream()
                .filter(session -> isOpen(session, now))
                .toList();
    }

    /// Ends one session of a member; every one for an empty id.
    ///
    /// @return how many ended
    public int signOut(String name, Optional<String> id, Actor by) {
        return store.end(
                StaffMember.folded(name), id, note(by, id.isEmpty() ? "signed.out.everywhere" : "signed.out", name));
    }

    /// Makes an access token for a program.
    ///
    /// @param label what it is for
    /// @return the token, which is shown once and cannot be read again
    public String makeToken(String name, String label, Duration length, Actor by) {
        StaffMember member = known(name);
        String clean = label.strip();
        if (clean.isEmpty() || clean.length() > DEVICE) {
            throw new AccountRefused(Problem.of("token.label", label));
        }
        String token = "benchleaf_" + secrets.token();
        String sum = Secrets.sum(token);
        Instant now = clock.instant();
        store.addToken(
                sum,
                new AccessToken(Secrets.id(sum), clean, member, now, now.plus(length), Optional.empty()),
                note(by, "token.made", member.name() + ": " + clean));
        return token;
    }

    /// What an access token opens now.
    public Optional<AccessToken> token(String token) {
        String sum = Secrets.sum(token);
        Instant now = clock.instant();
        Optional<AccessToken> found = store.token(sum)
                .filter(known -> known.member().active() && known.endsAt().isAfter(now));
        if (found.isPresent()
                && found.get()
                        .usedAt()
                        .map(used -> used.plus(HEARD_OF).isBefore(now))
                        .orElse(true)) {
            store.used(sum, now);
        }
        return found;
    }

    public List<AccessToken> tokens(String name) {
        return store.tokens(StaffMember.folded(name));
    }

    /// @return false when there is none of this id
    public boolean removeToken(String name, String id, Actor by) {
        return store.removeToken(StaffMember.folded(name), id, note(by, "token.removed", name + ": " + id));
    }

    /// Writes what was done into the audit log.
    ///
    /// @param act as in [AuditLine]
    public void wrote(Actor by, String act, String about) {
        store.write(note(by, act, about));
    }

    /// The audit log before an entry, the newest first.
    ///
    /// @param before a number of an entry; `Long.MAX_VALUE` for the newest
    public List<AuditLine> log(long before, int most) {
        return store.log(before, most);
    }

    /// The newest entries of an act about something, the newest first.
    ///
    /// @param start with which what they are about begins, letters and digits, with blanks
    public List<AuditLine> log(String act, String start, int most) {
        return store.log(act, start, most);
    }

    private StaffMember known(String name) {
        return find(name).orElseThrow(() -> new AccountRefused(Problem.of("staff.unknown", name)));
    }

    private Note note(Actor by, String act, String about) {
        return new Note(clock.instant(), by, act, about);
    }
}
