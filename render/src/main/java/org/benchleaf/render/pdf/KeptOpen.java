package org.benchleaf.render.pdf;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/// Passes everything on but the closing.
final class KeptOpen extends FilterOutputStream {
    KeptOpen(OutputStream out) {
        super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        out.write(bytes, from, length);
    }

    @Override
    public void close() throws IOException {
        flush();
    }
}
