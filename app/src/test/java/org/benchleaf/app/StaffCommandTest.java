package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;

/// Who may sign in, from the command line.
@ResourceLock("java.lang.System.in")
class StaffCommandTest {
    private static final String PASSWORD = "four dry roots in a row";

    @TempDir
    Path folder;

    private String shop = "";

    @BeforeEach
    void makeShop() {
        shop = folder.resolve("shop").toString();
        assertThat(Run.benchleaf("new", shop, "--shop", "Test nursery").code()).isZero();
    }

    private Run staff(String input, String... arguments) {
        String[] all = new String[arguments.length + 3];
        all[0] = "staff";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        all[arguments.length + 1] = "--workspace";
        all[arguments.length + 2] = shop;
        InputStream keyboard = System.in;
        System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
        try {
            return Run.benchleaf(all);
        } finally {
            System.setIn(keyboard);
        }
    }

    @Test
    void theFirstOwnerIsAddedWithAPasswordFromTheStandardInput() {
        assertThat(staff("", "list").out()).contains("nobody may sign in yet").contains("staff add NAME --role owner");
        Run added = staff(PASSWORD + "\n", "add", "Olive", "--role", "owner");
        assertThat(added.code()).isZero();
        assertThat(added.out()).isEqualToNormalizingNewlines("Olive may sign in as owner\n");
        assertThat(staff("", "list").out()).isEqualToNormalizingNewlines("Olive  owner  since 25 November 2026\n");
        assertThat(staff("", "list", "--json").out())
                .contains("\"name\" : \"Olive\"")
                .doesNotContain("argon2");
    }

    @Test
    void aPasswordThatIsMissingOrShortAddsNobodyAndSaysWhatToDo() {
        Run missing = staff("", "add", "Olive", "--role", "owner");
        assertThat(missing.code()).isEqualTo(ErrorReport.USAGE);
        assertThat(missing.err()).contains("no password was given");
        Run small = staff("secret\n", "add", "Olive", "--role", "owner");
        assertThat(small.code()).isEqualTo(ErrorReport.FAILED);
        assertThat(small.err()).contains("the password has 6 characters; write 15 to 200");
        assertThat(staff("", "list").out()).contains("nobody may sign in yet");
    }

    @Test
    void aPasswordIsNeverAnArgument() {
        assertThat(staff("", "add", "Olive", PASSWORD, "--role", "owner").code())
                .isEqualTo(ErrorReport.USAGE);
        assertThat(staff("", "add", "Olive", "--password", PASSWORD, "--role", "owner")
                        .code())
                .isEqualTo(ErrorReport.USAGE);
    }

    @Test
    void rolesChangeAndPeopleLeaveButTheLastOwnerStays() {
        staff(PASSWORD + "\n", "add", "Olive", "--role", "owner");
        staff(PASSWORD + "\n", "add", "Wren", "--role", "walker");
        assertThat(staff("", "role", "wren", "--role", "editor").out()).contains("Wren is editor now");
        assertThat(staff("", "leave", "Wren").out()).contains("Wren may no longer sign in");
        assertThat(staff("", "list").out()).contains("Wren  has left");
        Run last = staff("", "leave", "Olive");
        assertThat(last.code()).isEqualTo(ErrorReport.FAILED);
        assertThat(last.err()).contains("Olive is the only owner");
        assertThat(staff(PASSWORD + " twice\n", "password", "Olive").out()).contains("has a new password");
    }

    @Test
    void aTokenIsPrintedAloneSoThatAScriptCanTakeIt() {
        staff(PASSWORD + "\n", "add", "Olive", "--role", "owner");
        Run token = staff("", "token", "Olive", "--for", "availability feed");
        assertThat(token.out()).matches("benchleaf_[A-Za-z0-9_-]{43}\\R");
        assertThat(token.err()).contains("shown this once");
    }
}
