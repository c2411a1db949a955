package org.benchleaf.app.cli;

import java.io.PrintWriter;

/// Where a command writes: results to one stream, remarks and errors to the other.
///
/// @param out results
/// @param err remarks, progress and errors
public record Console(PrintWriter out, PrintWriter err) {}
