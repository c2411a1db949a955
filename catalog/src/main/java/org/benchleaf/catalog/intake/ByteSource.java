package org.benchleaf.catalog.intake;

import java.io.IOException;
import java.io.InputStream;

/// Bytes that can be read from the start again: once to find out the encoding, once to read rows.
@FunctionalInterface
interface ByteSource {
    InputStream open() throws IOException;
}
