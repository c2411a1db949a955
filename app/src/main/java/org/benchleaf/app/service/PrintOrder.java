package org.benchleaf.app.service;

/// In which order things are printed.
public enum PrintOrder {
    /// As they were asked for.
    GIVEN,
    /// By their botanical names.
    NAME,
    /// By the places of their lots, as one walks along the benches.
    BENCH
}
