package org.benchleaf.app.cli;

import java.util.Locale;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.measure.LengthStyle;
import picocli.CommandLine.Option;

/// How paper is worded, where it is not to be as the settings say.
final class PaperOptions {
    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            description = "en, es or fr (default: the shop's); what was written as free text stays as it is")
    private Optional<String> language = Optional.empty();

    @Option(names = "--units", paramLabel = "UNITS", description = "imperial, metric or both (default: the shop's)")
    private Optional<LengthStyle> units = Optional.empty();

    /// @throws Refusal when nobody has written the words of that language
    PrintStyle style(Benchleaf benchleaf) {
        PrintStyle shop = benchleaf.style();
        Locale asked = language.map(Locale::forLanguageTag).orElse(shop.language());
        if (!benchleaf.paperLanguages().contains(asked.getLanguage())) {
            throw new Refusal(Problem.of("print.language", language.orElse(""))
                    .with("accepted", String.join(", ", benchleaf.paperLanguages())));
        }
        return new PrintStyle(asked, units.orElse(shop.lengths()), shop.containers());
    }
}
