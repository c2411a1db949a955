package org.benchleaf.catalog.intake;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.benchleaf.shared.Problem;
import org.jspecify.annotations.Nullable;

/// A list that may be too long for memory: its head is held, the rest lies block by block in a temporary file
/// that the system removes by itself when nobody holds the list any more, or when the program ends in
/// whatever way.
///
/// Unchanging and safe for many threads; quick when read from front to back.
///
/// @param <T> the kind of element
final class SpooledList<T> extends AbstractList<T> {
    /// Elements held in memory before anything is written to disk: most lists of growers.
    private static final int HELD = 2_000;
    private static final int BLOCK = 256;
    private static final int BUFFER = 8 * 1024;

    private final List<T> head;
    private final long[] starts;
    private final int size;
    private final SpoolFormat<T> format;
    private final @Nullable FileChannel file;
    private volatile @Nullable Block<T> last;

    private SpooledList(List<T> head, long[] starts, int size, SpoolFormat<T> format, @Nullable FileChannel file) {
        this.head = head;
        this.starts = starts;
        this.size = size;
        this.format = format;
        this.file = file;
    }

    private record Block<T>(int number, List<T> elements) {}

    @Override
    public T get(int index) {
        if (index < 0 || index >= size) {
            throw new IndexOutOfBoundsException(index);
        }
        if (index < head.size()) {
            return head.get(index);
        }
        int number = (index - head.size()) / BLOCK;
        Block<T> block = last;
        if (block == null || block.number() != number) {
            block = new Block<>(number, read(number));
            last = block;
        }
        return block.elements().get((index - head.size()) % BLOCK);
    }

    @Override
    public int size() {
        return size;
    }

    private List<T> read(int number) {
        FileChannel channel = file;
        if (channel == null) {
            throw new IllegalStateException("a block of a list that has none");
        }
        try {
            ByteBuffer bytes = ByteBuffer.allocate((int) (starts[number + 1] - starts[number]));
            while (bytes.hasRemaining() && channel.read(bytes, starts[number] + bytes.position()) >= 0) {}
            int count = Math.min(BLOCK, size - head.size() - number * BLOCK);
            List<T> elements = new ArrayList<>(count);
            try (DataInputStream in = new DataInputStream(
                    new BufferedInputStream(new InflaterInputStream(new ByteArrayInputStream(bytes.array()))))) {
                for (int i = 0; i < count; i++) {
                    elements.add(format.read(in));
                }
            }
            return elements;
        } catch (IOException unreadable) {
            throw new SheetException(Problem.of("file.spool", String.valueOf(unreadable.getMessage())), unreadable);
        }
    }

    /// Takes the elements one after the other.
    static final class Builder<T> {
        private final SpoolFormat<T> format;
        private final List<T> head = new ArrayList<>();
        private final List<T> block = new ArrayList<>();
        private long[] starts = new long[64];
        private int blocks;
        private int size;
        private @Nullable FileChannel file;

        Builder(SpoolFormat<T> format) {
            this.format = format;
        }

        /// @throws SheetException `file.spool` when the temporary folder has no room
        void add(T element) {
            size++;
            if (head.size() < HELD) {
                head.add(element);
                return;
            }
            block.add(element);
            if (block.size() == BLOCK) {
                write();
            }
        }

        void addAll(Iterable<T> elements) {
            elements.forEach(this::add);
        }

        int size() {
            return size;
        }

        private void write() {
            try {
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                Deflater fast = new Deflater(Deflater.BEST_SPEED);
                try (DataOutputStream out = new DataOutputStream(
                        new BufferedOutputStream(new DeflaterOutputStream(bytes, fast, BUFFER), BUFFER))) {
                    for (T element : block) {
                        format.write(element, out);
                    }
                }
                fast.end();
                FileChannel channel = file == null ? open() : file;
                file = channel;
                ByteBuffer content = ByteBuffer.wrap(bytes.toByteArray());
                long end = starts[blocks] + content.remaining();
                while (content.hasRemaining()) {
                    channel.write(content, starts[blocks] + content.position());
                }
                blocks++;
                if (blocks == starts.length) {
                    starts = Arrays.copyOf(starts, blocks * 2);
                }
                starts[blocks] = end;
                block.clear();
            } catch (IOException full) {
                throw new SheetException(Problem.of("file.spool", String.valueOf(full.getMessage())), full);
            }
        }

        private static FileChannel open() throws IOException {
            Path path = Files.createTempFile("benchleaf-", ".plan");
            return FileChannel.open(
                    path,
                    Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE));
        }

        /// What was taken, in the order taken.
        List<T> list() {
            if (!block.isEmpty()) {
                write();
            }
            if (blocks == 0) {
                return List.copyOf(head);
            }
            return new SpooledList<>(List.copyOf(head), Arrays.copyOf(starts, blocks + 1), size, format, file);
        }
    }
}
