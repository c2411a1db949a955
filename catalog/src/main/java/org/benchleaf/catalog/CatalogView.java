package org.benchleaf.catalog;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.benchleaf.catalog.model.OwnWord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.catalog.rules.SaleRuleBook;
import org.benchleaf.shared.code.PlantKey;

/// The read side of a catalog: facts and stock as of now. Safe for many threads.
public interface CatalogView {
    CatalogRevision revision();

    /// When the last change was applied; empty for an empty catalog.
    Optional<Instant> changedAt();

    /// A plant, retired ones too: what was printed for it still leads here.
    default Optional<PlantRecord> plant(PlantKey key) {
        return Optional.ofNullable(plants(List.of(key)).get(key));
    }

    /// The plants with these keys that exist; in the order asked.
    Map<PlantKey, PlantRecord> plants(Collection<PlantKey> keys);

    /// The stock of these plants; a plant without items has an empty stock.
    Map<PlantKey, PlantStock> stock(Collection<PlantKey> keys);

    /// The sale rules in force. What they say of a plant stands among its facts too, as `sale_rules`.
    default SaleRuleBook saleRules() {
        return SaleRuleBook.empty();
    }

    /// The sale rules as they were in an earlier state: those by which a quote was made then.
    default SaleRuleBook saleRulesAt(CatalogRevision revision) {
        return saleRules();
    }

    /// Hands over every plant that is not retired, in the order in which they were registered, from one
    /// consistent state.
    ///
    /// @return the revision of that state
    CatalogRevision forEachPlant(Consumer<PlantRecord> consumer);

    /// Hands over every plant that is not retired, in the order in which they were registered, from one
    /// consistent state, with what of it is the shop's own word.
    ///
    /// @return the revision of that state
    default CatalogRevision forEachStated(BiConsumer<PlantRecord, OwnWord> consumer) {
        return forEachPlant(plant -> consumer.accept(plant, OwnWord.NONE));
    }

    /// Hands over the stock of every plant that has items, in the order in which they were registered, from
    /// one consistent state.
    CatalogRevision forEachStock(Consumer<PlantStock> consumer);

    /// What changed after a revision, oldest first; a plant that changed twice comes once, at its last change.
    List<Change> changesSince(CatalogRevision revision);

    /// The moment as of which stock is told: holds that have ended by then set nothing aside.
    default Instant now() {
        return Instant.now();
    }

    /// Of which plants holds have ended since a moment: their free stock is different, and no change tells of it.
    default Freed freedSince(Instant moment) {
        return new Freed(moment, Set.of());
    }

    /// Plants of which holds have ended.
    ///
    /// @param asOf the moment up to which was looked; ask from there next time
    record Freed(Instant asOf, Set<PlantKey> plants) {
        public Freed {
            plants = Set.copyOf(plants);
        }
    }

    /// One entry of the change feed.
    ///
    /// @param revision the state that the change made
    /// @param plant the plant that is different now
    /// @param kind what of it changed
    record Change(CatalogRevision revision, PlantKey plant, Kind kind) {
        /// Facts and names change seldom, stock hourly: readers may treat them apart.
        public enum Kind {
            PLANT,
            STOCK
        }
    }
}
