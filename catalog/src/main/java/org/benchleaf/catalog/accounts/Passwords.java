package org.benchleaf.catalog.accounts;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Base64;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.catalog.AccountRefused;
import org.benchleaf.shared.Problem;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/// Passwords kept as Argon2id (RFC 9106), written `$argon2id$v=19$m=65536,t=3,p=4$SALT$SUM` so that
/// each stored one says how it was made and another cost can be chosen later.
final class Passwords {
    /// RFC 9106, section 4: 128 bits of salt, 256 of sum.
    private static final int SALT_BYTES = 16;
    private static final int SUM_BYTES = 32;

    /// NIST SP 800-63B-4 (2025), section 3.1.1.2: 15 or more where the password is all there is, at
    /// least 64 allowed, no rules on kinds of characters. From memory.
    static final int SHORTEST = 15;

    static final int LONGEST = 200;
    private static final int DIFFERENT = 5;

    private static final Pattern STORED = Pattern.compile(
            "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,2})\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");

    private final Secrets secrets;
    private final PasswordCost cost;
    /// Each sum takes 64 MiB: a crowd at the door must not take the memory of those inside.
    private final Semaphore room = new Semaphore(2, true);

    Passwords(Secrets secrets, PasswordCost cost) {
        this.secrets = secrets;
        this.cost = cost;
    }

    /// @throws AccountRefused when it is too short, too long or of too few different characters
    String store(String name, char[] password) {
        String text = normal(password);
        int length = text.codePointCount(0, text.length());
        if (length < SHORTEST || length > LONGEST) {
            throw new AccountRefused(Problem.of("password.length", Integer.toString(length))
                    .with("shortest", Integer.toString(SHORTEST))
                    .with("longest", Integer.toString(LONGEST)));
        }
        String plain = StaffMember.folded(text);
        if (plain.codePoints().distinct().count() < DIFFERENT
                || plain.replace(StaffMember.folded(name), "").isBlank()) {
            throw new AccountRefused(Problem.of("password.simple", ""));
        }
        byte[] salt = secrets.bytes(SALT_BYTES);
        byte[] sum = sum(text, salt, cost, SUM_BYTES);
        return written(salt, sum);
    }

    /// Takes as long for a name that nobody has: `stored` is then [#nobody].
    boolean fits(char[] password, String stored) {
        Matcher parts = STORED.matcher(stored);
        if (!parts.matches()) {
            throw new IllegalStateException("a stored password is not written as Argon2id");
        }
        byte[] wanted = Base64.getDecoder().decode(parts.group(5));
        byte[] sum = sum(
                normal(password),
                Base64.getDecoder().decode(parts.group(4)),
                new PasswordCost(
                        Integer.parseInt(parts.group(1)),
                        Integer.parseInt(parts.group(2)),
                        Integer.parseInt(parts.group(3))),
                wanted.length);
        return java.security.MessageDigest.isEqual(wanted, sum);
    }

    /// What no password fits, at the same cost.
    String nobody() {
        return written(secrets.bytes(SALT_BYTES), secrets.bytes(SUM_BYTES));
    }

    private String written(byte[] salt, byte[] sum) {
        return "$argon2id$v=19$m=%d,t=%d,p=%d$%s$%s"
                .formatted(cost.memoryKib(), cost.passes(), cost.lanes(), base64(salt), base64(sum));
    }

    /// Two keyboards may write one letter differently.
    private static String normal(char[] password) {
        return Normalizer.normalize(new String(password), Normalizer.Form.NFKC);
    }

    private byte[] sum(String password, byte[] salt, PasswordCost work, int length) {
        room.acquireUninterruptibly();
        byte[] bytes = password.getBytes(StandardCharsets.UTF_8);
        try {
            return argon2id(
                    bytes,
                    new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                            .withSalt(salt)
                            .withMemoryAsKB(work.memoryKib())
                            .withIterations(work.passes())
                            .withParallelism(work.lanes())
                            .build(),
                    length);
        } finally {
            room.release();
            Arrays.fill(bytes, (byte) 0);
        }
    }

    private static byte[] argon2id(byte[] password, Argon2Parameters parameters, int length) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(parameters);
        byte[] sum = new byte[length];
        generator.generateBytes(password, sum);
        return sum;
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().withoutPadding().encodeToString(bytes);
    }
}
