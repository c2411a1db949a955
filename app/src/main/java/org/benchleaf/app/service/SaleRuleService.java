package org.benchleaf.app.service;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.catalog.Catalog;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.NameBook;
import org.benchleaf.catalog.intake.Sheet;
import org.benchleaf.catalog.intake.SheetReader;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.catalog.names.NameReading;
import org.benchleaf.catalog.rules.RuleList;
import org.benchleaf.catalog.rules.RuleListReader;
import org.benchleaf.catalog.rules.SaleRuleBook;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.rule.PlantRules;

/// Sale rules: loads lists, and says what they hold of a plant, in the catalog or not.
public final class SaleRuleService {
    private final Catalog catalog;

    public SaleRuleService(Catalog catalog) {
        this.catalog = catalog;
    }

    /// Reads a list without loading it.
    public static RuleList read(Path file) {
        try (Sheet sheet = SheetReader.open(file)) {
            return RuleListReader.read(sheet);
        }
    }

    /// Reads a list that comes with the program.
    public static RuleList read(String file, byte[] content) {
        try (Sheet sheet = SheetReader.open(file, content)) {
            return RuleListReader.read(sheet);
        }
    }

    /// Loads a list in place of the earlier one of its name.
    public CatalogRevision load(RuleList list) {
        return catalog.load(list);
    }

    /// What the lists say of a plant.
    ///
    /// @param name as it is to be shown
    /// @param key its key, when it is in the catalog
    /// @param sure false when it was found by a common name or by a guess at the spelling
    /// @param rules what bears on it
    public record Said(BotanicalName name, Optional<PlantKey> key, boolean sure, PlantRules rules) {}

    /// What the lists say of what a person typed: a key, a name of the catalog, or any other botanical name, which
    /// is then judged as it is written. For the law a name is never guessed at: one that is misspelt is looked up
    /// only when no list has its genus.
    ///
    /// @param at the state of the catalog whose lists are asked; the lists in force when empty
    /// @throws Refusal when no list is loaded, or nothing is known by that name
    public Said ask(String text, Optional<CatalogRevision> at, PlantFinder finder) {
        CatalogView view = catalog.view();
        SaleRuleBook book = at.map(view::saleRulesAt).orElseGet(view::saleRules);
        if (book.isEmpty()) {
            throw new Refusal(Problem.of("rules.none", text));
        }
        Optional<BotanicalName> written =
                NameReader.read(text) instanceof NameReading.Read read ? Optional.of(read.name()) : Optional.empty();
        NameBook names = catalog.names();
        Optional<PlantRecord> exact = PlantKey.read(text)
                .toOptional()
                .or(() -> written.flatMap(names::byName))
                .or(() -> names.bySynonym(text))
                .flatMap(view::plant);
        if (exact.isPresent()) {
            return said(exact.get(), true, book);
        }
        Optional<BotanicalName> listed = written.filter(name -> book.knowsGenus(name.genus()));
        return listed.isPresent() ? said(listed.get(), book) : said(finder.find(text), false, book);
    }

    private static Said said(BotanicalName name, SaleRuleBook book) {
        return new Said(name, Optional.empty(), true, book.of(name, List.of()).orElseThrow());
    }

    private Said said(PlantRecord plant, boolean sure, SaleRuleBook book) {
        List<String> synonyms = new ArrayList<>();
        Optional<PlantRecord> next = Optional.of(plant);
        while (next.isPresent()) {
            next.get().synonyms().stream().map(Synonym::text).forEach(synonyms::add);
            next = next.get().taxon().flatMap(catalog.view()::plant);
        }
        return new Said(
                plant.name(),
                Optional.of(plant.key()),
                sure,
                book.of(plant.name(), synonyms).orElseThrow());
    }
}
