package org.benchleaf.app.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/// How a spreadsheet is read: what its columns mean, and which sheet of a workbook.
final class MapOptions {
    @Option(
            names = "--map",
            paramLabel = "MAP",
            description = "the name of a saved map or of one that comes with the program (own-plants, own-stock,"
                    + " usda-characteristics, landscape-taxa), or a file (default: chosen by headings and"
                    + " contents)")
    private Optional<String> map = Optional.empty();

    @Option(names = "--sheet", paramLabel = "SHEET", description = "the sheet of a workbook (default: the first)")
    private Optional<String> sheet = Optional.empty();

    Optional<String> map() {
        return map;
    }

    Optional<String> sheet() {
        return sheet;
    }
}
