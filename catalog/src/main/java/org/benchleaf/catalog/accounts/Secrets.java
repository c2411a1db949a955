package org.benchleaf.catalog.accounts;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/// Random secrets and the sums by which they are known again. A secret of 256 random bits cannot be
/// guessed from its SHA-256, so that a stolen database opens no session.
final class Secrets {
    private static final int BYTES = 32;
    private static final int ID = 12;

    private final SecureRandom random = new SecureRandom();

    byte[] bytes(int count) {
        byte[] bytes = new byte[count];
        random.nextBytes(bytes);
        return bytes;
    }

    /// 256 bits, safe in an address, a cookie and a header.
    String token() {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(BYTES));
    }

    static String sum(String token) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum);
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /// Names what has this sum on screen.
    static String id(String sum) {
        return sum.substring(0, ID);
    }

    /// What pages of a session send back with every change: known to whoever holds the session's token
    /// only.
    static String formToken(String sessionToken) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(sessionToken.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
            byte[] code = mac.doFinal("benchleaf form".getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(code);
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has HMAC-SHA-256", impossible);
        }
    }

    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
