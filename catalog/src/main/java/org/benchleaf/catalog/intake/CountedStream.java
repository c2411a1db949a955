package org.benchleaf.catalog.intake;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/// Counts the bytes that were read, so that a long file can tell how far it is.
final class CountedStream extends FilterInputStream {
    private final long of;
    private volatile long read;

    /// @param of how many bytes the file has
    CountedStream(InputStream in, long of) {
        super(in);
        this.of = of;
    }

    /// 0 to 1.
    double share() {
        return of <= 0 ? 1 : Math.min(1, (double) read / of);
    }

    @Override
    public int read() throws IOException {
        int next = super.read();
        count(next < 0 ? 0 : 1);
        return next;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
        int got = super.read(bytes, offset, length);
        count(Math.max(0, got));
        return got;
    }

    @Override
    public long skip(long bytes) throws IOException {
        long skipped = super.skip(bytes);
        count(skipped);
        return skipped;
    }

    @SuppressWarnings("NonAtomicVolatileUpdate") // one thread reads the file, others only look
    private void count(long bytes) {
        read += bytes;
    }
}
