package org.benchleaf.catalog.intake;

import java.math.BigDecimal;
import java.util.Optional;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.code.Gtin;

/// Reads trade numbers that a spreadsheet program took for numbers: without their leading zeros, or as a power
/// of ten. The check digit must prove what is put back.
final class GtinCells {
    private static final int LEAST = 7;

    private GtinCells() {}

    /// A number put right.
    ///
    /// @param gtin as it was meant
    /// @param how what had happened: `gtin.zeros` or `gtin.power`
    record Repaired(Gtin gtin, Problem how) {}

    /// The number that was meant; empty when nothing proves one.
    static Optional<Repaired> repaired(String cell) {
        boolean power = cell.matches("(?i)\\d(?:[.,]\\d+)?E\\+?\\d{1,2}");
        String digits = cell.replaceFirst("\\.0+$", "");
        if (power) {
            BigDecimal number = new BigDecimal(cell.replace(',', '.'));
            if (number.scale() != 0) {
                return Optional
                        .empty(); // digits are lost for ever, or were never whole: no check digit brings them back
            }
            digits = number.toPlainString();
        }
        if (!digits.matches("\\d{" + LEAST + ",14}")) {
            return Optional.empty();
        }
        for (int length : new int[] {8, 12, 13, 14}) {
            if (length >= digits.length()) {
                String padded = "0".repeat(length - digits.length()) + digits;
                if (Gtin.read(padded) instanceof Reading.Read<Gtin>(Gtin gtin)) {
                    String key = power ? "gtin.power" : "gtin.zeros";
                    return Optional.of(new Repaired(gtin, Problem.of(key, cell).with("taken", padded)));
                }
            }
        }
        return Optional.empty();
    }
}
