package org.benchleaf.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.content.Wording;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.need.NeedReader;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/// A need as a command takes it: a sentence, options, and which part of the answer is wanted.
final class NeedParameters {
    @Mixin
    private final NeedOptions options = new NeedOptions();

    @Option(
            names = "--limit",
            paramLabel = "N",
            defaultValue = "10",
            description = "how many plants (default: ${DEFAULT-VALUE})")
    private int limit;

    @Option(names = "--skip", paramLabel = "N", defaultValue = "0", description = "leave out the first so many")
    private int skip;

    @Option(
            names = "--language",
            paramLabel = "CODE",
            description = "the language the need is written and answered in, en or es (default: the shop's)")
    private Optional<String> language = Optional.empty();

    /// The reader of sentences in the language asked for.
    NeedReader reader(Benchleaf benchleaf) {
        return benchleaf.needReader(language(benchleaf));
    }

    /// The words of the answer: those of the language that the need is written in.
    Wording wording(Benchleaf benchleaf) {
        return benchleaf.wording(language(benchleaf));
    }

    private Locale language(Benchleaf benchleaf) {
        return language.map(Locale::forLanguageTag).orElse(benchleaf.language());
    }

    /// What is asked, read from a sentence and the options.
    Asked asked(Benchleaf benchleaf, NeedReader reader, String sentence, Set<Facet> facets) {
        NeedReading reading = reader.read(sentence, benchleaf.today());
        List<WeighedWish> wishes = new ArrayList<>(reading.need().wishes());
        wishes.addAll(options.wishes(benchleaf.today(), benchleaf.settings().place(), benchleaf.postalZones()));
        List<WeighedWish> changed = options.changed(wishes);
        YearWeek week = YearWeek.of(benchleaf.today());
        return new Asked(reading, changed, new NeedQuery(new Need(changed), "", week, skip, limit, facets));
    }

    /// @param reading what was made of the sentence
    /// @param wishes those of the sentence and of the options
    /// @param query what the search is asked
    record Asked(NeedReading reading, List<WeighedWish> wishes, NeedQuery query) {}
}
