package org.benchleaf.catalog.intake;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.Optional;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.benchleaf.shared.name.Infraspecific;
import org.benchleaf.shared.name.Rank;

/// Names and keys on disk, part by part, so that reading back guesses nothing.
final class NameFormat {
    private NameFormat() {}

    static void write(BotanicalName name, DataOutput out) throws IOException {
        out.writeByte(name.genusMark().ordinal());
        SpoolFormat.text(name.genus(), out);
        epithet(name.species(), out);
        epithet(name.infraspecific().map(Infraspecific::epithet), out);
        out.writeByte(name.infraspecific().map(below -> below.rank().ordinal()).orElse(0));
        SpoolFormat.optional(name.group(), out);
        SpoolFormat.optional(name.cultivar(), out);
        SpoolFormat.optional(name.tradeDesignation(), out);
    }

    static BotanicalName read(DataInput in) throws IOException {
        HybridMark mark = HybridMark.values()[in.readByte()];
        String genus = SpoolFormat.text(in);
        Optional<Epithet> species = epithet(in);
        Optional<Epithet> below = epithet(in);
        Rank rank = Rank.values()[in.readByte()];
        return new BotanicalName(
                mark,
                genus,
                species,
                below.map(epithet -> new Infraspecific(rank, epithet)),
                SpoolFormat.optional(in),
                SpoolFormat.optional(in),
                SpoolFormat.optional(in));
    }

    private static void epithet(Optional<Epithet> epithet, DataOutput out) throws IOException {
        SpoolFormat.optional(epithet.map(Epithet::text), out);
        if (epithet.isPresent()) {
            out.writeByte(epithet.get().mark().ordinal());
        }
    }

    private static Optional<Epithet> epithet(DataInput in) throws IOException {
        Optional<String> text = SpoolFormat.optional(in);
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(new Epithet(HybridMark.values()[in.readByte()], text.get()));
    }

    static void write(Optional<PlantKey> key, DataOutput out) throws IOException {
        SpoolFormat.optional(key.map(PlantKey::text), out);
    }

    static Optional<PlantKey> key(DataInput in) throws IOException {
        return SpoolFormat.optional(in).map(PlantKey::new);
    }
}
