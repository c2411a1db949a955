package org.benchleaf.catalog.accounts;

/// How much work one look at a password is.
///
/// @param memoryKib memory
/// @param passes over the memory
/// @param lanes that could be worked on at once
public record PasswordCost(int memoryKib, int passes, int lanes) {
    /// RFC 9106, section 4, second recommended option: 64 MiB, 3 passes, 4 lanes.
    public static final PasswordCost RECOMMENDED = new PasswordCost(1 << 16, 3, 4);
}
