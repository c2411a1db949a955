package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/// Asks veraPDF, the checker of the PDF Association, whether a file keeps to its standards. It checks what a machine
/// can.
final class Vera {
    private Vera() {}

    /// Fails with the clauses that a PDF breaks.
    static void assertAccessibleAndArchivable(byte[] pdf) throws Exception {
        for (PDFAFlavour standard : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
            assertThat(broken(pdf, standard))
                    .as("broken clauses of " + standard)
                    .isEmpty();
        }
    }

    private static List<String> broken(byte[] pdf, PDFAFlavour standard) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.getTotalAssertions()).isGreaterThan(300);
            return result.getTestAssertions().stream()
                    .filter(one -> one.getStatus() == TestAssertion.Status.FAILED)
                    .map(one ->
                            one.getRuleId().getClause() + "-" + one.getRuleId().getTestNumber() + " " + one.getMessage()
                                    + " at " + one.getLocation().getContext())
                    .distinct()
                    .limit(20)
                    .toList();
        }
    }
}
