package org.benchleaf.catalog.audit;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/// The audit of a catalog in figures.
///
/// @param plants how many were looked at
/// @param score 0 to 100, the mean of the plants' scores; 0 for an empty catalog
/// @param byKind how many remarks of each kind
/// @param gapsByAttribute in how many plants each fact is missing
public record AuditSums(
        int plants, double score, Map<PlantAudit.Kind, Integer> byKind, Map<String, Integer> gapsByAttribute) {
    public AuditSums {
        byKind = Map.copyOf(byKind);
        gapsByAttribute = Map.copyOf(gapsByAttribute);
    }

    /// Adds plants up.
    static final class Adder {
        private final Map<PlantAudit.Kind, Integer> byKind = new EnumMap<>(PlantAudit.Kind.class);
        private final Map<String, Integer> gaps = new TreeMap<>();
        private int plants;
        private long score;

        void add(PlantAudit plant) {
            plants++;
            score += plant.score();
            for (PlantAudit.Remark remark : plant.remarks()) {
                byKind.merge(remark.kind(), 1, Integer::sum);
                if (remark.kind() == PlantAudit.Kind.GAP) {
                    gaps.merge(remark.attribute(), 1, Integer::sum);
                }
            }
        }

        AuditSums sums() {
            double mean = plants == 0 ? 0 : Math.round(10.0 * score / plants) / 10.0;
            return new AuditSums(plants, mean, byKind, gaps);
        }
    }
}
