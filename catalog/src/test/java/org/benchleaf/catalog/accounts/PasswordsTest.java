package org.benchleaf.catalog.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.HexFormat;
import org.benchleaf.catalog.AccountRefused;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordsTest {
    private final Passwords passwords = new Passwords(new Secrets(), PasswordCost.RECOMMENDED);

    // RFC 9106, section 5.3: the test vector of Argon2id
    @Test
    void theSumIsTheOneOfTheStandard() {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withSalt(filled(16, 2))
                .withSecret(filled(8, 3))
                .withAdditional(filled(12, 4))
                .withMemoryAsKB(32)
                .withIterations(3)
                .withParallelism(4)
                .build());
        byte[] sum = new byte[32];
        generator.generateBytes(filled(32, 1), sum);
        assertThat(HexFormat.of().formatHex(sum))
                .isEqualTo("0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659");
    }

    // the reference program of the password hashing competition, src/test.c: hashtest(version, 2, 16, 1, "password",
    // "somesalt", ...), Argon2id
    @Test
    void whatTheReferenceProgramStoredIsRead() {
        String stored = "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";
        assertThat(passwords.fits("password".toCharArray(), stored)).isTrue();
        assertThat(passwords.fits("Password".toCharArray(), stored)).isFalse();
    }

    // RFC 9106, section 4, second recommended option: m=2^16 KiB, t=3, p=4, salt of 128 bits, sum of 256 bits
    @Test
    void aPasswordIsStoredAtTheRecommendedCostWithASaltOfItsOwn() {
        char[] password = "four dry roots in a row".toCharArray();
        String one = passwords.store("Anna", password);
        String other = passwords.store("Anna", password);
        assertThat(one)
                .matches("\\$argon2id\\$v=19\\$m=65536,t=3,p=4\\$[A-Za-z0-9+/]{22}\\$[A-Za-z0-9+/]{43}")
                .isNotEqualTo(other)
                .doesNotContain("roots");
        assertThat(passwords.fits(password, one)).isTrue();
        assertThat(passwords.fits("four dry roots in a roW".toCharArray(), one)).isFalse();
        assertThat(passwords.fits(password, passwords.nobody())).isFalse();
    }

    @Test
    void aLetterTypedInTwoPiecesIsTheSameLetter() {
        String stored = passwords.store("Anna", "caf\u00e9 by the potting shed".toCharArray());
        assertThat(passwords.fits("cafe\u0301 by the potting shed".toCharArray(), stored))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "short enough", "fourteen chars"})
    void aShortPasswordIsRefused(String password) {
        assertThatThrownBy(() -> passwords.store("Anna", password.toCharArray()))
                .isInstanceOfSatisfying(
                        AccountRefused.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo("password.length"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"aaaaaaaaaaaaaaaaaaaa", "abababababababababab", "Wrenfold AnnaWrenfold Anna"})
    void aPasswordOfFewLettersOrOfTheNameIsRefused(String password) {
        assertThatThrownBy(() -> passwords.store("Wrenfold Anna", password.toCharArray()))
                .isInstanceOfSatisfying(
                        AccountRefused.class,
                        refused -> assertThat(refused.problem().key()).isEqualTo("password.simple"));
    }

    private static byte[] filled(int length, int value) {
        byte[] bytes = new byte[length];
        Arrays.fill(bytes, (byte) value);
        return bytes;
    }
}
