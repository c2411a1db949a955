package org.benchleaf.catalog.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.demo.DemoCatalog;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.Shipment;

/// The lists of the demo catalog, and a short way to ask them.
final class DemoRules {
    static final String HEADINGS =
            "id,kind,jurisdiction,taxon,also_named,covers,standing,listed,receipt_from,sale_from,"
                    + "until,exempt,notice,source,compiled_on\n";

    private DemoRules() {}

    static List<RuleList> lists() {
        return DemoCatalog.ruleFiles().stream().map(DemoRules::list).toList();
    }

    static SaleRuleBook book() {
        return SaleRuleBook.of(
                lists().stream().flatMap(list -> list.rules().stream()).toList());
    }

    private static RuleList list(String file) {
        try (InputStream content = DemoCatalog.open(file)) {
            return read(file, content.readAllBytes());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static RuleList read(String file, byte[] content) {
        try (Sheet sheet = SheetReader.open(file, content)) {
            return RuleListReader.read(sheet);
        }
    }

    /// A list of these rows under the usual headings.
    static RuleList rows(String... rows) {
        return read("test.csv", (HEADINGS + String.join("\n", rows)).getBytes(StandardCharsets.UTF_8));
    }

    static SaleVerdict ask(SaleRuleBook book, String plant, String to, String on, String... synonyms) {
        Shipment shipment = Shipment.to(Destination.read(to).orThrow(), java.time.LocalDate.parse(on));
        return ask(book, plant, shipment, synonyms);
    }

    static SaleVerdict ask(SaleRuleBook book, String plant, Shipment shipment, String... synonyms) {
        return book.of(NameReader.read(plant).known().orElseThrow(), List.of(synonyms))
                .orElseThrow()
                .at(shipment);
    }
}
