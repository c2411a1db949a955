package org.benchleaf.catalog.accounts;

import java.text.Normalizer;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// Somebody who may sign in.
///
/// @param name as written; no two differ in capitals only
/// @param role what they may do
/// @param tier of a customer, whose prices they pay: a name among the shop's price tiers; the catalog's when empty
/// @param active false for one who has left: the name stays in the ledger and the log, and is not given
///     again
/// @param since when they were added
public record StaffMember(String name, Role role, Optional<String> tier, boolean active, Instant since) {
    private static final Pattern NAME =
            Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N} .'_-]{0,38}[\\p{L}\\p{M}\\p{N}.])?");

    /// Reads a name: 1 to 40 letters and digits, with spaces, dots, hyphens and apostrophes between them.
    public static Reading<String> readName(String text) {
        String name = Normalizer.normalize(text.strip().replaceAll("\\s+", " "), Normalizer.Form.NFC);
        return NAME.matcher(name).matches() ? Reading.of(name) : new Reading.Refused<>(Problem.of("staff.name", text));
    }

    /// By which names are told apart.
    public static String folded(String name) {
        return Normalizer.normalize(name.strip().replaceAll("\\s+", " "), Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT);
    }
}
