package org.benchleaf.catalog.intake;

import java.util.List;
import org.benchleaf.catalog.CatalogRevision;

/// Everything an import would do, worked out before anything is done; a dry run prints the same plan.
///
/// What is long lies in a temporary file, so that a plan of any length needs little memory; read its
/// lists from front to back.
///
/// @param file the name of the spreadsheet
/// @param base the state of the catalog it was worked out against; applying it to a later one is refused
/// @param rank how much the file's facts count beside others: the higher is chosen, of equals the newer
/// @param rows how many rows were read; the heading, totals and repetitions not counted
/// @param plants what it says of plants, in the order of rows
/// @param lots what it says of lots, in the order of rows; no lot twice
/// @param findings what a person should know, in the order of rows
public record ImportPlan(
        String file,
        CatalogRevision base,
        Rank rank,
        long rows,
        List<PlantDraft> plants,
        List<LotDraft> lots,
        List<Finding> findings) {
    public ImportPlan {
        plants = unchanging(plants);
        lots = unchanging(lots);
        findings = unchanging(findings);
    }

    /// A long list lies on disk and is not copied into memory.
    private static <T> List<T> unchanging(List<T> list) {
        return list instanceof SpooledList ? list : List.copyOf(list);
    }

    /// Whose facts are chosen when sources disagree: the shop's own before a reference work.
    public enum Rank {
        REFERENCE,
        OWN
    }

    /// Rows that are not loaded.
    public long rowsLeftOut() {
        if (plants.isEmpty() && lots.isEmpty()) {
            return rows; // where a needed heading is missing, no row means anything
        }
        long count = 0;
        long before = 0;
        for (Finding finding : findings) {
            if (finding.outcome() == Finding.Outcome.ROW_LEFT_OUT
                    && finding.place().row() != before) {
                count++;
                before = finding.place().row();
            }
        }
        return count;
    }
}
