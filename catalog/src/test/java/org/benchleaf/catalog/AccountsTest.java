package org.benchleaf.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.benchleaf.catalog.accounts.AccessToken;
import org.benchleaf.catalog.accounts.Accounts;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.AuditLine;
import org.benchleaf.catalog.accounts.PasswordCost;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.accounts.SignIn;
import org.benchleaf.catalog.accounts.StaffMember;
import org.benchleaf.catalog.accounts.StaffSession;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/// Who may sign in, on both databases.
@ParameterizedClass
@EnumSource(Engine.class)
class AccountsTest {
    private static final Actor OWNER = new Actor("Olive", Actor.COMMAND_LINE);
    private static final char[] GOOD = "four dry roots in a row".toCharArray();
    private static final char[] OTHER = "five wet shoots in a pot".toCharArray();
    private static final char[] BAD = "three blind guesses here".toCharArray();
    /// Next to nothing: what a password costs is tested where it is made.
    private static final PasswordCost LITTLE = new PasswordCost(64, 1, 1);

    private static final String HOME = "192.0.2.7";
    private static final String ELSEWHERE = "198.51.100.9";

    @TempDir
    Path folder;

    private final Engine engine;
    private final TestClock clock = new TestClock("2026-11-25T07:00:00Z");
    private Catalog catalog;
    private Accounts accounts;

    AccountsTest(Engine engine) {
        this.engine = engine;
    }

    @BeforeEach
    void open() {
        catalog = engine.create(folder, clock);
        accounts = catalog.accounts(LITTLE);
        accounts.add("Olive", Role.OWNER, GOOD, OWNER);
    }

    @AfterEach
    void close() {
        catalog.close();
    }

    private String token(String name, char[] password, String from) {
        return ((SignIn.Done) accounts.signIn(name, password, from, "a telephone")).token();
    }

    private void fail(int times, String name, String from) {
        for (int time = 0; time < times; time++) {
            assertThat(accounts.signIn(name, BAD, from, "")).isEqualTo(new SignIn.Wrong());
        }
    }

    @Test
    void aMemberSignsInWithTheirNameHoweverItsCapitalsStand() {
        assertThat(accounts.signIn(" oLive ", GOOD, HOME, "a telephone")).isInstanceOf(SignIn.Done.class);
        assertThat(accounts.signIn("Olive", OTHER, HOME, "")).isEqualTo(new SignIn.Wrong());
        assertThat(accounts.signIn("Nobody", GOOD, HOME, "")).isEqualTo(new SignIn.Wrong());
    }

    @Test
    void aNameIsGivenOnce() {
        assertThatThrownBy(() -> accounts.add("OLIVE", Role.VIEWER, OTHER, OWNER))
                .isInstanceOfSatisfying(
                        AccountRefused.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo("staff.taken"));
        assertThatThrownBy(() -> accounts.add("<b>", Role.VIEWER, OTHER, OWNER))
                .isInstanceOfSatisfying(
                        AccountRefused.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo("staff.name"));
        assertThat(accounts.staff()).extracting(StaffMember::name).containsExactly("Olive");
    }

    @Test
    void aSessionEndsWhenNothingIsHeardOfItForAWorkingDay() {
        String token = token("Olive", GOOD, HOME);
        clock.pass(Accounts.IDLE.minusMinutes(1));
        assertThat(accounts.session(token)).isPresent();
        clock.pass(Accounts.IDLE.minusMinutes(1)); // it was heard of in between
        assertThat(accounts.session(token)).isPresent();
        clock.pass(Accounts.IDLE);
        assertThat(accounts.session(token)).isEmpty();
    }

    @Test
    void aSessionEndsAfterAWeekHoweverBusy() {
        String token = token("Olive", GOOD, HOME);
        for (Duration passed = Duration.ZERO;
                passed.plusHours(8).compareTo(Accounts.LONGEST) < 0;
                passed = passed.plusHours(8)) {
            clock.pass(Duration.ofHours(8));
            assertThat(accounts.session(token)).isPresent();
        }
        clock.pass(Duration.ofHours(8));
        assertThat(accounts.session(token)).isEmpty();
    }

    @Test
    void signingOutEverywhereEndsEverySessionAndNoOtherMembers() {
        accounts.add("Wren", Role.WALKER, OTHER, OWNER);
        String wren = token("Wren", OTHER, HOME);
        String desk = token("Olive", GOOD, HOME);
        String telephone = token("Olive", GOOD, ELSEWHERE);
        assertThat(accounts.sessions("olive")).extracting(StaffSession::from).contains(HOME, ELSEWHERE);
        assertThat(accounts.signOut("Olive", Optional.empty(), OWNER)).isEqualTo(2);
        assertThat(accounts.session(desk)).isEmpty();
        assertThat(accounts.session(telephone)).isEmpty();
        assertThat(accounts.session(wren)).isPresent();
    }

    @Test
    void aNewPasswordAndLeavingEndEverySession() {
        accounts.add("Wren", Role.WALKER, OTHER, OWNER);
        String before = token("Wren", OTHER, HOME);
        accounts.setPassword("Wren", GOOD, OWNER);
        assertThat(accounts.session(before)).isEmpty();
        assertThat(accounts.signIn("Wren", OTHER, HOME, "")).isEqualTo(new SignIn.Wrong());
        String after = token("Wren", GOOD, HOME);
        String program = accounts.makeToken("Wren", "feed", Accounts.TOKEN, OWNER);
        accounts.change("Wren", Role.WALKER, false, OWNER);
        assertThat(accounts.session(after)).isEmpty();
        assertThat(accounts.token(program)).isEmpty();
        assertThat(accounts.signIn("Wren", GOOD, HOME, "")).isEqualTo(new SignIn.Wrong());
    }

    @Test
    void anotherRoleHoldsAtOnceForThoseSignedIn() {
        accounts.add("Wren", Role.EDITOR, OTHER, OWNER);
        String token = token("Wren", OTHER, HOME);
        accounts.change("Wren", Role.VIEWER, true, OWNER);
        assertThat(accounts.session(token).orElseThrow().member().role()).isEqualTo(Role.VIEWER);
    }

    @Test
    void theLastOwnerCanNeitherLeaveNorBecomeSomethingElse() {
        for (boolean active : new boolean[] {true, false}) {
            assertThatThrownBy(() -> accounts.change("Olive", Role.EDITOR, active, OWNER))
                    .isInstanceOfSatisfying(
                            AccountRefused.class,
                            refused -> assertThat(refused.problem().key()).isEqualTo("staff.last.owner"));
        }
        accounts.add("Wren", Role.OWNER, OTHER, OWNER);
        assertThat(accounts.change("Olive", Role.EDITOR, true, OWNER).role()).isEqualTo(Role.EDITOR);
    }

    @Test
    void aCustomerHasATierUntilTheyAreSomethingElse() {
        accounts.addCustomer("Moss", Optional.of("landscaper"), OTHER, OWNER);
        assertThat(accounts.find("Moss").orElseThrow().tier()).contains("landscaper");
        assertThat(accounts.changeCustomer("Moss", Optional.of("retail"), OWNER).tier())
                .contains("retail");
        assertThat(accounts.change("Moss", Role.CUSTOMER, false, OWNER).tier()).contains("retail");
        assertThat(accounts.change("Moss", Role.VIEWER, true, OWNER).tier()).isEmpty();
        assertThat(accounts.find("Moss").orElseThrow().tier()).isEmpty();
    }

    @Test
    void guessingOnANameIsHeldOffLongerAndLongerAndTheRightPasswordIsNotLookedAtThen() {
        fail(8, "Olive", ELSEWHERE);
        assertThat(accounts.signIn("Olive", GOOD, "203.0.113.1", ""))
                .isEqualTo(new SignIn.Held(Duration.ofSeconds(30)));
        clock.pass(Duration.ofSeconds(31));
        fail(1, "Olive", ELSEWHERE);
        assertThat(accounts.signIn("Olive", GOOD, ELSEWHERE, "")).isEqualTo(new SignIn.Held(Duration.ofMinutes(1)));
        clock.pass(Duration.ofSeconds(61));
        assertThat(accounts.signIn("Olive", GOOD, ELSEWHERE, "")).isInstanceOf(SignIn.Done.class);
    }

    @Test
    void guessingFromOneAddressOnManyNamesIsHeldOff() {
        for (int name = 0; name < 15; name++) {
            fail(1, "name " + name, ELSEWHERE);
        }
        assertThat(accounts.signIn("Olive", GOOD, ELSEWHERE, "")).isInstanceOf(SignIn.Held.class);
        assertThat(accounts.signIn("Olive", GOOD, HOME, "")).isInstanceOf(SignIn.Done.class);
    }

    @Test
    void aStrangersGuessingDoesNotKeepTheOwnerOutWhereTheySignedInLately() {
        token("Olive", GOOD, HOME);
        fail(8, "Olive", ELSEWHERE);
        assertThat(accounts.signIn("Olive", GOOD, ELSEWHERE, "")).isInstanceOf(SignIn.Held.class);
        assertThat(accounts.signIn("Olive", GOOD, HOME, "")).isInstanceOf(SignIn.Done.class);
    }

    @Test
    void guessingIsRememberedWhenTheProgramStartsAnew() {
        fail(8, "Olive", ELSEWHERE);
        catalog.close();
        catalog = Catalog.open(engine.location(folder), clock);
        accounts = catalog.accounts(LITTLE);
        assertThat(accounts.signIn("Olive", GOOD, ELSEWHERE, "")).isInstanceOf(SignIn.Held.class);
        clock.pass(Duration.ofDays(2));
        assertThat(accounts.signIn("Olive", GOOD, ELSEWHERE, "")).isInstanceOf(SignIn.Done.class);
    }

    @Test
    void attemptsMadeAtOnceDoNotSlipPast() throws Exception {
        List<Future<SignIn>> attempts = new ArrayList<>();
        try (ExecutorService crowd = Executors.newFixedThreadPool(12)) {
            for (int attempt = 0; attempt < 12; attempt++) {
                attempts.add(crowd.submit(() -> accounts.signIn("Olive", BAD, ELSEWHERE, "")));
            }
        }
        int looked = 0;
        for (Future<SignIn> attempt : attempts) {
            looked += attempt.get() instanceof SignIn.Wrong ? 1 : 0;
        }
        assertThat(looked).isEqualTo(8);
    }

    @Test
    void aFormTokenIsGoodForItsOwnSessionOnly() {
        String one = token("Olive", GOOD, HOME);
        String other = token("Olive", GOOD, HOME);
        assertThat(accounts.isFormToken(one, accounts.formToken(one))).isTrue();
        assertThat(accounts.isFormToken(other, accounts.formToken(one))).isFalse();
        assertThat(accounts.isFormToken(one, "")).isFalse();
    }

    @Test
    void anAccessTokenOpensUntilItEndsOrIsTakenAway() {
        String token = accounts.makeToken("Olive", "availability feed", Duration.ofDays(30), OWNER);
        AccessToken known = accounts.token(token).orElseThrow();
        assertThat(known.label()).isEqualTo("availability feed");
        assertThat(known.member().name()).isEqualTo("Olive");
        assertThat(accounts.token(token + "x")).isEmpty();
        assertThat(accounts.tokens("Olive").getFirst().usedAt()).isPresent();
        clock.pass(Duration.ofDays(31));
        assertThat(accounts.token(token)).isEmpty();
        String second = accounts.makeToken("Olive", "till", Duration.ofDays(30), OWNER);
        assertThat(accounts.removeToken(
                        "Olive", accounts.token(second).orElseThrow().id(), OWNER))
                .isTrue();
        assertThat(accounts.token(second)).isEmpty();
    }

    @Test
    void theLogSaysWhoDidWhatFromWhereAndKeepsNoPassword() {
        accounts.add("Wren", Role.WALKER, OTHER, OWNER);
        accounts.signIn("four dry roots in a row", BAD, ELSEWHERE, "");
        fail(1, "Wren", ELSEWHERE);
        token("Wren", OTHER, HOME);
        List<AuditLine> log = accounts.log(Long.MAX_VALUE, 4);
        assertThat(log)
                .extracting(line -> line.act() + " " + line.actor().who() + " "
                        + line.actor().from() + " " + line.about())
                .containsExactly(
                        "signed.in Wren 192.0.2.7 ",
                        "sign.in.failed Wren 198.51.100.9 ",
                        "sign.in.failed  198.51.100.9 ",
                        "staff.added Olive command line Wren: walker");
        assertThat(accounts.log(log.getLast().number(), 10)).hasSize(1);
    }

    @Test
    void nothingInTheDatabaseOpensASession() throws Exception {
        String token = token("Olive", GOOD, HOME);
        List<String> sums = new ArrayList<>();
        try (var connection = engine.connect(folder);
                var rows = connection.createStatement().executeQuery("SELECT sum, id FROM staff_session")) {
            while (rows.next()) {
                sums.add(rows.getString(1));
                sums.add(rows.getString(2));
            }
        }
        assertThat(sums).hasSize(2).doesNotContain(token);
        for (String sum : sums) {
            assertThat(accounts.session(sum)).isEmpty();
        }
    }
}
