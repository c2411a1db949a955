package org.benchleaf.app.web.route;

import java.io.InputStream;

/// A file that was sent in with a form.
///
/// @param name what the sender calls it; never a path to be opened
/// @param bytes how long it is
/// @param content read once
public record Upload(String name, long bytes, InputStream content) {}
