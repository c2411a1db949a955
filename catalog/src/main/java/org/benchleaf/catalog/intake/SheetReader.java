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
import org.benchleaf.shared.Problem;

/// Opens files of comma-separated values and their kin (RFC 4180; semicolon, tab or bar as well), whatever program
/// wrote
/// them: UTF-8, UTF-16 or Windows-1252.
public final class SheetReader {
    private static final int HEAD = 32 * 1024;

    private SheetReader() {}

    /// Opens a file.
    ///
    /// @throws SheetException when it is not there, is a folder, a workbook or empty
    public static Sheet open(Path path) {
        String file = Optional.ofNullable(path.getFileName()).orElse(path).toString();
        if (Files.isDirectory(path)) {
            throw new SheetException(Problem.of("file.directory", file));
        }
        if (!Files.exists(path)) {
            throw new SheetException(Problem.of("file.missing", file));
        }
        return open(file, () -> Files.newInputStream(path));
    }

    /// Opens what was uploaded or packed into the program.
    ///
    /// @param file the name that findings give as the place
    /// @throws SheetException when it is a workbook or empty
    public static Sheet open(String file, byte[] content) {
        byte[] bytes = content.clone();
        return open(file, () -> new ByteArrayInputStream(bytes));
    }

    private static Sheet open(String file, ByteSource source) {
        try {
            TextEncoding encoding = TextEncoding.of(source, file);
            String head = head(source, encoding);
            if (head.isBlank()) {
                throw new SheetException(Problem.of("file.empty", file));
            }
            char delimiter = Delimiters.of(head);
            CsvReader<CsvRecord> rows = CsvReader.builder()
                    .fieldSeparator(delimiter)
                    .skipEmptyLines(false)
                    .trimWhitespacesAroundQuotes(true)
                    .allowUnclosedQuote(false)
                    .allowExtraCharsAfterClosingQuote(false)
                    .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .ofCsvRecord(text(source, encoding));
            boolean declared =
                    Delimiters.isDeclaration(head.lines().findFirst().orElse("").strip());
            return sheet(file, delimiter, rows, declared, findings(file, encoding));
        } catch (IOException unreadable) {
            throw new SheetException(Problem.of("file.unreadable", file), unreadable);
        }
    }

    /// A file that is refused at its heading is closed again.
    private static Sheet sheet(
            String file, char delimiter, CsvReader<CsvRecord> rows, boolean declared, List<Finding> findings)
            throws IOException {
        try {
            return new Sheet(file, delimiter, rows, declared, findings);
        } catch (SheetException refused) {
            rows.close();
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
        try (Reader text = text(source, encoding)) {
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

    private static Reader text(ByteSource source, TextEncoding encoding) throws IOException {
        InputStream in = source.open();
        in.skipNBytes(encoding.markLength());
        return new BufferedReader(new InputStreamReader(
                in,
                encoding.charset()
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE)));
    }
}
