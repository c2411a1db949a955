package org.benchleaf.catalog.intake;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/// How one kind of element is written to a temporary file and read back equal. Lives as long as the
/// program that wrote it, so it has no version.
///
/// @param <T> the kind of element
interface SpoolFormat<T> {
    void write(T element, DataOutput out) throws IOException;

    T read(DataInput in) throws IOException;

    /// A text of any length.
    static void text(String text, DataOutput out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static String text(DataInput in) throws IOException {
        byte[] bytes = new byte[in.readInt()];
        in.readFully(bytes);
        return new String(bytes, StandardCharsets.UTF_8);
    }

    static void optional(Optional<String> text, DataOutput out) throws IOException {
        out.writeBoolean(text.isPresent());
        if (text.isPresent()) {
            text(text.get(), out);
        }
    }

    static Optional<String> optional(DataInput in) throws IOException {
        return in.readBoolean() ? Optional.of(text(in)) : Optional.empty();
    }

    static void place(Place place, DataOutput out) throws IOException {
        text(place.file(), out);
        out.writeLong(place.row());
        optional(place.column(), out);
    }

    static Place place(DataInput in) throws IOException {
        return new Place(text(in), in.readLong(), optional(in));
    }
}
