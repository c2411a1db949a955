package org.benchleaf.catalog.walk;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.catalog.model.LedgerKind;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.stock.Condition;

/// One thing seen on a crop walk.
///
/// A telephone without signal sends it later, and again when no answer came: the key, made where it was
/// seen, sees to it that it counts once however often it arrives.
///
/// @param key unique to this sighting, made on the telephone
/// @param walk on which walk
/// @param plant what was seen
/// @param item the number of its item, when a size was told
/// @param lot the grower's number for the lot, when one was told
/// @param place block and row as they were told; may be empty
/// @param conditions how it looked
/// @param heightCm how high it stood, in whole centimetres, 1 to [#TALLEST]
/// @param count how many were found
/// @param photo the file of its photograph
/// @param remark one line; may be empty
/// @param seenAt when, by the telephone's clock
public record Sighting(
        String key,
        Walk walk,
        PlantKey plant,
        Optional<Integer> item,
        Optional<String> lot,
        String place,
        Set<Condition> conditions,
        Optional<Integer> heightCm,
        Optional<Integer> count,
        Optional<String> photo,
        String remark,
        Instant seenAt) {
    /// Higher than any plant that is sold in a pot or a ball, in centimetres.
    public static final int TALLEST = 3_000;

    /// Longest remark and place, in letters.
    public static final int LONGEST = 500;

    private static final Pattern KEY = Pattern.compile("[A-Za-z0-9-]{8,64}");

    public Sighting {
        conditions = Set.copyOf(conditions);
        if (!isKey(key)) {
            throw new IllegalArgumentException("no key of a sighting: " + key);
        }
    }

    /// Whether a text can be the key of a walk or a sighting: 8 to 64 letters, digits and hyphens.
    public static boolean isKey(String text) {
        return KEY.matcher(text).matches();
    }

    /// The same, when its numbers and texts can be what somebody saw.
    ///
    /// @return or `walk.nothing.seen`, `walk.height`, `walk.count`, `walk.too.long`
    public Reading<Sighting> checked() {
        boolean nothing =
                conditions.isEmpty() && heightCm.isEmpty() && count.isEmpty() && photo.isEmpty() && remark.isBlank();
        if (nothing) {
            return Reading.refused("walk.nothing.seen", plant.text());
        }
        if (heightCm.filter(cm -> cm < 1 || cm > TALLEST).isPresent()) {
            return new Reading.Refused<>(
                    Problem.of("walk.height", heightCm.get().toString()).with("most", Integer.toString(TALLEST)));
        }
        if (count.filter(number -> !LedgerKind.COUNTED.accepts(number)).isPresent()) {
            return Reading.refused("walk.count", count.get().toString());
        }
        return remark.length() > LONGEST || place.length() > LONGEST
                ? new Reading.Refused<>(
                        Problem.of("walk.too.long", Integer.toString(Math.max(remark.length(), place.length())))
                                .with("most", Integer.toString(LONGEST)))
                : Reading.of(this);
    }

    public String who() {
        return walk.who();
    }

    /// The same of another lot.
    public Sighting at(String otherLot) {
        return new Sighting(
                key,
                walk,
                plant,
                item,
                Optional.of(otherLot),
                place,
                conditions,
                heightCm,
                count,
                photo,
                remark,
                seenAt);
    }

    /// Whether it says anything that the stock ledger writes down.
    public boolean speaksOfStock() {
        return count.isPresent() || !conditions.isEmpty();
    }
}
