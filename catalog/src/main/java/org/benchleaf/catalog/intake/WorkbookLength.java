package org.benchleaf.catalog.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/// How many rows a workbook says it has, for a bar of progress; nothing else is believed of it.
final class WorkbookLength {
    /// The range that the sheet uses stands at its beginning; source: ECMA-376, 18.3.1.35.
    private static final Pattern RANGE = Pattern.compile("<(?:\\w+:)?dimension ref=\"[A-Z]+\\d+:[A-Z]+(\\d{1,7})\"");

    private static final int HEAD = 8 * 1024;

    private WorkbookLength() {}

    /// Empty when the workbook does not say, or names its parts in a way of its own.
    ///
    /// @param sheet its number, from 0; programs store sheets under their numbers
    static OptionalLong rows(Path workbook, int sheet) {
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            ZipEntry part = zip.getEntry("xl/worksheets/sheet" + (sheet + 1) + ".xml");
            if (part == null) {
                return OptionalLong.empty();
            }
            try (InputStream in = zip.getInputStream(part)) {
                Matcher range = RANGE.matcher(new String(in.readNBytes(HEAD), StandardCharsets.UTF_8));
                return range.find() ? OptionalLong.of(Long.parseLong(range.group(1))) : OptionalLong.empty();
            }
        } catch (IOException | IllegalArgumentException unknown) {
            return OptionalLong.empty(); // whoever reads the rows says what is wrong with it
        }
    }
}
