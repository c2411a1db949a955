package org.benchleaf.render;

/// Hears how a print goes on. Called by the thread that prints.
@FunctionalInterface
public interface PrintWatch {
    /// Stops at the first page that cannot be printed.
    PrintWatch STRICT = refusal -> {
        throw refusal;
    };

    /// A page or label cannot be printed as it stands. The print goes on without it, unless this throws.
    void refused(PrintRefused refusal);

    /// @param pages written so far
    default void written(int pages) {}
}
