package org.benchleaf.catalog.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.shared.Problem;

/// In which encoding a file is written: by its mark, by its zero bytes, else UTF-8 when every byte fits it, else
/// Windows-1252, which every byte fits.
///
/// @param charset how to decode
/// @param markLength bytes of the byte order mark, to be skipped
/// @param badLine the first line that is not UTF-8, 1 for the heading; 0 when all is well
/// @param problem what a person should know
record TextEncoding(Charset charset, int markLength, long badLine, Optional<Problem> problem) {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int SAMPLE = 4096;
    private static final int BUFFER = 64 * 1024;

    static TextEncoding of(ByteSource source, String file) throws IOException {
        byte[] start;
        try (InputStream in = source.open()) {
            start = in.readNBytes(SAMPLE);
        }
        if (start.length == 0) {
            throw new SheetException(Problem.of("file.empty", file));
        }
        refuseOtherKinds(start, file);
        if (startsWith(start, 0xEF, 0xBB, 0xBF)) {
            return utf8OrWindows(source, 3);
        }
        if (startsWith(start, 0xFF, 0xFE)) {
            return plain(StandardCharsets.UTF_16LE, 2);
        }
        if (startsWith(start, 0xFE, 0xFF)) {
            return plain(StandardCharsets.UTF_16BE, 2);
        }
        return withoutMark(source, start, file);
    }

    private static TextEncoding withoutMark(ByteSource source, byte[] start, String file) throws IOException {
        int[] zeros = new int[2];
        for (int at = 0; at < start.length; at++) {
            zeros[at % 2] += start[at] == 0 ? 1 : 0;
        }
        int many = start.length / 4;
        if (zeros[1] > many && zeros[0] < zeros[1] / 8 + 1) {
            return plain(StandardCharsets.UTF_16LE, 0);
        }
        if (zeros[0] > many && zeros[1] < zeros[0] / 8 + 1) {
            return plain(StandardCharsets.UTF_16BE, 0);
        }
        if (zeros[0] + zeros[1] > 0) {
            throw new SheetException(Problem.of("file.binary", file));
        }
        return utf8OrWindows(source, 0);
    }

    /// Workbooks are zip archives (`PK`), older ones compound files; a PDF says so itself.
    private static void refuseOtherKinds(byte[] start, String file) {
        if (startsWith(start, 'P', 'K', 3, 4)) {
            throw new SheetException(Problem.of("file.xlsx", file));
        }
        if (startsWith(start, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new SheetException(Problem.of("file.xls", file));
        }
        if (startsWith(start, '%', 'P', 'D', 'F')) {
            throw new SheetException(Problem.of("file.binary", file));
        }
    }

    private static boolean startsWith(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) {
            return false;
        }
        for (int at = 0; at < wanted.length; at++) {
            if ((bytes[at] & 0xFF) != wanted[at]) {
                return false;
            }
        }
        return true;
    }

    private static TextEncoding plain(Charset charset, int markLength) {
        return new TextEncoding(charset, markLength, 0, Optional.empty());
    }

    private static TextEncoding utf8OrWindows(ByteSource source, int markLength) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(BUFFER);
        CharBuffer chars = CharBuffer.allocate(BUFFER);
        long line = 1;
        try (InputStream in = source.open()) {
            in.skipNBytes(markLength);
            boolean end = false;
            while (!end) {
                int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
                end = read < 0;
                bytes.position(bytes.position() + Math.max(0, read));
                bytes.flip();
                chars.clear();
                CoderResult result = decoder.decode(bytes, chars, end);
                line += chars.flip().chars().filter(c -> c == '\n').count();
                if (result.isError()) {
                    int bad = bytes.get(bytes.position()) & 0xFF;
                    return windows(line, bad, markLength);
                }
                bytes.compact();
            }
        }
        return plain(StandardCharsets.UTF_8, markLength);
    }

    private static TextEncoding windows(long line, int bad, int markLength) {
        String taken = new String(new byte[] {(byte) bad}, WINDOWS);
        Problem problem = Problem.of("text.not-utf8", String.format(Locale.ROOT, "%02X", bad))
                .with("taken", taken)
                .with("encoding", "Windows-1252");
        return new TextEncoding(WINDOWS, markLength, line, Optional.of(problem));
    }
}
