package org.benchleaf.app.cli;

import org.benchleaf.app.service.CodeKind;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/// What printed codes say.
final class CodeOption {
    @Option(
            names = "--code",
            paramLabel = "KIND",
            defaultValue = "live",
            converter = Reader.class,
            description = "live (the plant's page) or digital-link (the item's trade number, GS1 Digital Link, which"
                    + " leads there too); default: ${DEFAULT-VALUE}")
    @SuppressWarnings("NullAway.Init")
    private CodeKind kind;

    CodeKind kind() {
        return kind;
    }

    /// Reads it as it is written on a command line.
    static final class Reader implements picocli.CommandLine.ITypeConverter<CodeKind> {
        @Override
        public CodeKind convert(String text) {
            return switch (text) {
                case "live" -> CodeKind.LIVE;
                case "digital-link" -> CodeKind.DIGITAL_LINK;
                default -> throw new TypeConversionException("write live or digital-link, not \"" + text + "\"");
            };
        }
    }
}
