package org.benchleaf.catalog.intake;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.DoubleSupplier;
import java.util.function.IntFunction;
import org.benchleaf.shared.Problem;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;

/// Opens workbooks (.xlsx), files of comma-separated values and their kin (RFC 4180; semicolon, tab or
/// bar as well), whatever program wrote them: UTF-8, UTF-16 or Windows-1252.
public final class SheetReader {
    /// Stands for the delimiter of a workbook, which has none.
    static final char NONE = '\0';

    private static final int HEAD = 32 * 1024;
    /// A workbook of 200,000 rows has about a tenth of it.
    private static final long MOST_BYTES = 300_000_000;
    private static final ReadingOptions WITH_FORMATS = new ReadingOptions(true, true);

    private SheetReader() {}

    /// Opens a file.
    ///
    /// @throws SheetException when it is not there, is a folder, a workbook or empty
    public static Sheet open(Path path) {
        return open(path, Optional.empty());
    }

    /// Opens a file.
    ///
    /// @param name of the sheet of a workbook; without it the first visible one
    /// @throws SheetException when it is not there, is a folder or empty, has no such sheet or is a
    ///     broken workbook
    public static Sheet open(Path path, Optional<String> name) {
        String file = Optional.ofNullable(path.getFileName()).orElse(path).toString();
        if (Files.isDirectory(path)) {
            throw new SheetException(Problem.of("file.directory", file));
        }
        if (!Files.exists(path)) {
            throw new SheetException(Problem.of("file.missing", file));
        }
        try {
            if (isWorkbook(() -> Files.newInputStream(path))) {
                if (Files.size(path) > MOST_BYTES) {
                    throw new SheetException(
                            Problem.of("file.large", file).with("most", Long.toString(MOST_BYTES / 1_000_000)));
                }
                return workbook(
                        file,
                        () -> new ReadableWorkbook(path.toFile(), WITH_FORMATS),
                        name,
                        sheet -> WorkbookLength.rows(path, sheet));
            }
        } catch (IOException unreadable) {
            throw new SheetException(Problem.of("file.unreadable", file), unreadable);
        }
        return open(file, () -> Files.newInputStream(path), length(path));
    }

    private static long length(Path path) {
        try {
            return Files.size(path);
        } catch (IOException unknown) {
            return 0; // no more than a bar of progress hangs on it
        }
    }

    /// Opens what was uploaded or packed into the program.
    ///
    /// @param file the name that findings give as the place
    /// @throws SheetException when it is a workbook or empty
    public static Sheet open(String file, byte[] content) {
        byte[] bytes = content.clone();
        try {
            if (isWorkbook(() -> new ByteArrayInputStream(bytes))) {
                return workbook(
                        file,
                        () -> new ReadableWorkbook(new ByteArrayInputStream(bytes), WITH_FORMATS),
                        Optional.empty(),
                        sheet -> OptionalLong.empty());
            }
        } catch (IOException impossible) {
            throw new SheetException(Problem.of("file.unreadable", file), impossible);
        }
        return open(file, () -> new ByteArrayInputStream(bytes), bytes.length);
    }

    /// A zip archive; whether it holds a workbook is found out on opening it.
    private static boolean isWorkbook(ByteSource source) throws IOException {
        try (InputStream in = source.open()) {
            byte[] start = in.readNBytes(4);
            return start.length == 4 && start[0] == 'P' && start[1] == 'K' && start[2] == 3 && start[3] == 4;
        }
    }

    private static Sheet workbook(
            String file,
            WorkbookRows.WorkbookSource source,
            Optional<String> name,
            IntFunction<OptionalLong> lengthOfSheet) {
        WorkbookRows.Opened opened = WorkbookRows.open(file, source, name);
        OptionalLong length = lengthOfSheet.apply(opened.rows().sheet());
        DoubleSupplier share = () -> length.isEmpty() || length.getAsLong() < 1
                ? -1
                : Math.min(1, (double) opened.rows().at() / length.getAsLong());
        return sheet(opened.file(), NONE, opened.rows(), opened.findings(), share);
    }

    private static Sheet open(String file, ByteSource source, long length) {
        try {
            TextEncoding encoding = TextEncoding.of(source, file);
            String head = head(source, encoding);
            if (head.isBlank()) {
                throw new SheetException(Problem.of("file.empty", file));
            }
            char delimiter = Delimiters.of(head);
            CountedStream counted = new CountedStream(source.open(), length);
            CsvReader<CsvRecord> rows = CsvReader.builder()
                    .fieldSeparator(delimiter)
                    .skipEmptyLines(false)
                    .trimWhitespacesAroundQuotes(true)
                    .allowUnclosedQuote(false)
                    .allowExtraCharsAfterClosingQuote(false)
                    .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .ofCsvRecord(text(counted, encoding));
            CsvRows lines = new CsvRows(file, rows);
            if (Delimiters.isDeclaration(head.lines().findFirst().orElse("").strip())) {
                lines.next();
            }
            return sheet(file, delimiter, lines, findings(file, encoding), counted::share);
        } catch (IOException unreadable) {
            throw new SheetException(Problem.of("file.unreadable", file), unreadable);
        }
    }

    /// A file that is refused at its heading is closed again.
    private static Sheet sheet(
            String file, char delimiter, RowSource rows, List<Finding> findings, DoubleSupplier share) {
        try {
            return new Sheet(file, delimiter, rows, findings, share);
        } catch (SheetException refused) {
            try {
                rows.close();
            } catch (IOException alsoBroken) {
                refused.addSuppressed(alsoBroken);
            }
            throw refused;
        }
    }

    private static List<Finding> findings(String file, TextEncoding encoding) {
        Place place = new Place(file, Math.max(1, encoding.badLine()), Optional.empty());
        return encoding.problem()
                .map(problem -> List.of(new Finding(place, problem, Finding.Outcome.KEPT)))
                .orElse(List.of());
    }

    private static String head(ByteSource source, TextEncoding encoding) throws IOException {
        try (Reader text = text(source.open(), encoding)) {
            char[] head = new char[HEAD];
            int length = 0;
            int read = text.read(head, 0, HEAD);
            while (read > 0) {
                length += read;
                read = length < HEAD ? text.read(head, length, HEAD - length) : -1;
            }
            return new String(head, 0, length);
        }
    }

    private static Reader text(InputStream in, TextEncoding encoding) throws IOException {
        in.skipNBytes(encoding.markLength());
        return new BufferedReader(new InputStreamReader(
                in,
                encoding.charset()
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE)));
    }
}
