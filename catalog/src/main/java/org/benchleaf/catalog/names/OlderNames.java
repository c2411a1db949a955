package org.benchleaf.catalog.names;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;

/// Names that somebody says are older ones of an accepted name. Authorities disagree, so each says who.
public final class OlderNames {
    /// An older name and the one to use.
    ///
    /// @param source who says so
    public record OlderName(BotanicalName older, BotanicalName accepted, Source source) {}

    /// By what is left of a name without signs, ranks and accents: lists leave the × out.
    private final Map<String, OlderName> byOlder;

    private OlderNames(Map<String, OlderName> byOlder) {
        this.byOlder = byOlder;
    }

    /// Those of a list; of two that disagree the first counts.
    public static OlderNames of(List<OlderName> names) {
        return new OlderNames(Map.of()).and(names);
    }

    /// Those that come with the program: common ones of gardens, each with its source. Far from complete.
    public static OlderNames shipped() {
        try (InputStream in = OlderNames.class.getResourceAsStream("older-names.csv")) {
            if (in == null) {
                throw new IllegalStateException("list of older names is missing from the program");
            }
            try (CsvReader<NamedCsvRecord> rows =
                    CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                return of(rows.stream()
                        .map(row -> new OlderName(
                                name(row.getField("older_name")),
                                name(row.getField("accepted_name")),
                                new Source(row.getField("source"))))
                        .toList());
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static BotanicalName name(String text) {
        return NameReader.read(text).known().orElseThrow(() -> new IllegalStateException("no name: " + text));
    }

    /// These, and others behind them: where both know a name these count.
    public OlderNames and(List<OlderName> others) {
        Map<String, OlderName> all = new HashMap<>(byOlder);
        others.forEach(name -> all.putIfAbsent(name.older().sortKey(), name));
        return new OlderNames(all);
    }

    /// These, and others behind them.
    public OlderNames and(OlderNames others) {
        return and(List.copyOf(others.all()));
    }

    /// All of them.
    public Collection<OlderName> all() {
        return Collections.unmodifiableCollection(byOlder.values());
    }

    /// The accepted name of a plant that is called by an older one; a cultivar moves with its taxon.
    public Optional<OlderName> of(BotanicalName name) {
        Optional<OlderName> whole = Optional.ofNullable(byOlder.get(name.sortKey()));
        if (whole.isPresent() || !name.isCultivated()) {
            return whole;
        }
        return name.taxonAbove()
                .flatMap(taxon -> Optional.ofNullable(byOlder.get(taxon.sortKey())))
                .map(taxon -> new OlderName(name, moved(name, taxon.accepted()), taxon.source()));
    }

    private static BotanicalName moved(BotanicalName name, BotanicalName taxon) {
        return new BotanicalName(
                taxon.genusMark(),
                taxon.genus(),
                taxon.species(),
                taxon.infraspecific(),
                name.group(),
                name.cultivar(),
                name.tradeDesignation());
    }
}
