package org.benchleaf.render;

import java.util.Optional;

/// Where photographs are kept, by their file name. Nothing is opened through it but what it chooses to give.
public interface Photographs {
    /// None at all.
    Photographs NONE = new Photographs() {
        @Override
        public Optional<byte[]> find(String file) {
            return Optional.empty();
        }

        @Override
        public Optional<Stamp> stamp(String file) {
            return Optional.empty();
        }

        @Override
        public String where() {
            return "-";
        }
    };

    /// @param file a bare file name
    /// @return the file as it is kept, or empty when there is none of that name
    Optional<byte[]> find(String file);

    /// What tells a changed file from the one seen before, without reading it; empty when there is none of that name.
    Optional<Stamp> stamp(String file);

    /// @param size in bytes
    /// @param changed when it was last changed, in milliseconds since 1970
    record Stamp(long size, long changed) {}

    /// Where they are looked for, for messages.
    String where();
}
