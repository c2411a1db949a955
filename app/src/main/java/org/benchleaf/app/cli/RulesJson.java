package org.benchleaf.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.app.service.RulesWords;
import org.benchleaf.app.service.SaleRuleService.Said;
import org.benchleaf.catalog.rules.RuleList;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.RuleMatch;
import org.benchleaf.shared.rule.Ruling;
import org.benchleaf.shared.rule.SaleStanding;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.Shipment;

/// Sale rules as JSON; the shape is described in `docs/sale-rules.md`.
final class RulesJson {
    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final Wording wording;

    RulesJson(Wording wording) {
        this.wording = wording;
    }

    /// @param state the catalog's after it; empty when the list was not loaded
    String loaded(Path file, RuleList list, Optional<Long> state) {
        ObjectNode root = Json.object();
        root.put("file", file.toString());
        root.put("loaded", state.isPresent());
        state.ifPresent(number -> root.put("revision", number));
        root.put("rules", list.rules().size());
        list.compiledOn().ifPresent(day -> root.put("compiledOn", day.toString()));
        ArrayNode findings = root.putArray("findings");
        FindingText words = new FindingText(wording);
        list.findings()
                .forEach(finding -> findings.addObject()
                        .put("row", finding.place().row())
                        .put("column", finding.place().column().orElse(""))
                        .put("problem", finding.problem().key())
                        .put("text", words.line(finding)));
        return Json.text(root);
    }

    String verdict(Said said, SaleVerdict verdict) {
        Shipment shipment = verdict.shipment();
        ObjectNode root = root(said, shipment.on(), verdict.compiledOn());
        root.put("shipTo", shipment.to().toString());
        shipment.from().ifPresent(place -> root.put("from", place.toString()));
        root.put("answer", verdict.answer().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        root.put("text", wording.verdict(verdict));
        root.put("sale", standing(verdict.sale()));
        root.put("receipt", standing(verdict.receipt()));
        add(root, verdict.rulings(), shipment);
        return text(root);
    }

    String all(Said said, LocalDate day) {
        ObjectNode root = root(said, day, said.rules().compiledOn());
        add(
                root,
                RulesWords.rulings(said, day),
                Shipment.to(Destination.of(Region.all().getFirst()), day));
        return text(root);
    }

    private ObjectNode root(Said said, LocalDate day, LocalDate compiledOn) {
        ObjectNode root = mapper.createObjectNode();
        root.put("plant", said.name().toString());
        said.key().ifPresent(key -> root.put("key", key.text()));
        root.put("inCatalog", said.key().isPresent());
        root.put("sure", said.sure());
        root.put("on", day.toString());
        root.put("compiledOn", compiledOn.toString());
        root.put("caution", wording.saleCaution(compiledOn));
        return root;
    }

    /// `none` is the absence of a rule in the list, not leave to sell.
    private static String standing(Optional<SaleStanding> standing) {
        return standing.map(SaleStanding::term).orElse("none");
    }

    private void add(ObjectNode root, List<Ruling> rulings, Shipment shipment) {
        var rules = root.putArray("rules");
        for (Ruling ruling : rulings) {
            RuleMatch match = ruling.match();
            ObjectNode node = rules.addObject();
            node.put("id", match.rule());
            node.put("kind", match.kind().term());
            node.put("jurisdiction", match.area().toString());
            node.put("standing", match.standing().term());
            node.put("manner", match.manner().term());
            node.put("listedAs", match.listedAs());
            match.dates().listed().ifPresent(day -> node.put("listed", day.toString()));
            match.dates().receipt().ifPresent(day -> node.put("receiptFrom", day.toString()));
            match.dates().sale().ifPresent(day -> node.put("saleFrom", day.toString()));
            match.dates().until().ifPresent(day -> node.put("until", day.toString()));
            node.put("saleRuled", ruling.saleStanding().isPresent());
            node.put("receiptRuled", ruling.receiptStanding().isPresent());
            node.put("reach", ruling.reach().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            node.put("notice", match.notice());
            node.put("source", match.source().text());
            node.put("compiledOn", match.compiledOn().toString());
            node.put("text", wording.ruling(ruling, shipment));
        }
    }

    private String text(ObjectNode root) {
        try {
            return mapper.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
