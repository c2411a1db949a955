package org.benchleaf.catalog.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.benchleaf.shared.name.Infraspecific;
import org.benchleaf.shared.name.Rank;
import org.jspecify.annotations.Nullable;

/// A botanical name as columns of a plant's row, each part for itself, so that reading back guesses nothing.
final class NameColumns {
    /// The columns, in the order of [#values].
    static final List<String> COLUMNS = List.of(
            "name",
            "sort_key",
            "taxon_name",
            "genus_mark",
            "genus",
            "species_mark",
            "species",
            "below_rank",
            "below_mark",
            "below_epithet",
            "cultivar_group",
            "cultivar",
            "trade_designation");

    private NameColumns() {}

    static @Nullable Object[] values(BotanicalName name) {
        return new @Nullable Object[] {
            name.toString(),
            name.sortKey(),
            name.taxonAbove().map(BotanicalName::toString).orElse(null),
            name.genusMark().sign(),
            name.genus(),
            name.species().map(epithet -> epithet.mark().sign()).orElse(null),
            name.species().map(Epithet::text).orElse(null),
            name.infraspecific().map(below -> below.rank().mark()).orElse(null),
            name.infraspecific().map(below -> below.epithet().mark().sign()).orElse(null),
            name.infraspecific().map(below -> below.epithet().text()).orElse(null),
            name.group().orElse(null),
            name.cultivar().orElse(null),
            name.tradeDesignation().orElse(null)
        };
    }

    /// Reads the name of a row whose columns carry their own names.
    static BotanicalName read(ResultSet row) throws SQLException {
        Optional<Epithet> species = epithet(row.getString("species_mark"), row.getString("species"));
        Optional<Epithet> below = epithet(row.getString("below_mark"), row.getString("below_epithet"));
        Optional<String> rank = Optional.ofNullable(row.getString("below_rank"));
        return new BotanicalName(
                mark(row.getString("genus_mark")),
                row.getString("genus"),
                species,
                below.flatMap(epithet -> rank.map(mark -> new Infraspecific(rank(mark), epithet))),
                Optional.ofNullable(row.getString("cultivar_group")),
                Optional.ofNullable(row.getString("cultivar")),
                Optional.ofNullable(row.getString("trade_designation")));
    }

    private static Optional<Epithet> epithet(@Nullable String mark, @Nullable String text) {
        return mark == null || text == null ? Optional.empty() : Optional.of(new Epithet(mark(mark), text));
    }

    private static HybridMark mark(String sign) {
        return Arrays.stream(HybridMark.values())
                .filter(mark -> mark.sign().equals(sign))
                .findFirst()
                .orElseThrow();
    }

    private static Rank rank(String mark) {
        return Arrays.stream(Rank.values())
                .filter(rank -> rank.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }
}
