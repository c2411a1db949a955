package org.benchleaf.shared.code;

import org.benchleaf.shared.Reading;

/// A Global Trade Item Number of 8, 12, 13 or 14 digits with a right check digit (GS1 General Specifications).
///
/// @param digits as printed, leading zeros kept
public record Gtin(String digits) {
    public Gtin {
        if (!isGtin(digits)) {
            throw new IllegalArgumentException("not a GTIN: " + digits);
        }
    }

    /// Reads 8, 12, 13 or 14 digits; blanks and hyphens between them do not matter.
    public static Reading<Gtin> read(String text) {
        String digits = text.replaceAll("[\\s-]", "");
        if (!digits.matches("[0-9]{8}|[0-9]{12,14}")) {
            return Reading.refused("gtin.form", text);
        }
        return isGtin(digits) ? Reading.of(new Gtin(digits)) : Reading.refused("gtin.check", text);
    }

    /// The check digit for digits that lack theirs: from the right, weights 3, 1, 3, 1 ...; the sum filled up to ten.
    ///
    /// The same rule serves GTIN-8 to GTIN-14, GLN and SSCC.
    ///
    /// @throws IllegalArgumentException when `body` is not all digits 0 to 9, or is empty
    public static int checkDigit(String body) {
        if (!body.matches("[0-9]+")) {
            throw new IllegalArgumentException("digits only; got " + body);
        }
        int sum = 0;
        for (int fromRight = 0; fromRight < body.length(); fromRight++) {
            int digit = body.charAt(body.length() - 1 - fromRight) - '0';
            sum += fromRight % 2 == 0 ? 3 * digit : digit;
        }
        return (10 - sum % 10) % 10;
    }

    private static boolean isGtin(String digits) {
        return digits.matches("[0-9]{8}|[0-9]{12,14}")
                && checkDigit(digits.substring(0, digits.length() - 1)) == digits.charAt(digits.length() - 1) - '0';
    }

    /// Filled with zeros on the left to 14 digits, as GS1 Digital Link and databases want it.
    public String padded() {
        return "0".repeat(14 - digits.length()) + digits;
    }

    @Override
    public String toString() {
        return digits;
    }
}
