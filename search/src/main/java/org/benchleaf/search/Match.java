package org.benchleaf.search;

import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.PlantStock;
import org.benchleaf.search.fit.Fit;

/// A plant that answers a need, as the catalog knows it at the time of answering.
///
/// @param plant its facts
/// @param stock what is for sale of it
/// @param fit how it meets the need, judged from these facts and this stock
public record Match(PlantRecord plant, PlantStock stock, Fit fit) {}
