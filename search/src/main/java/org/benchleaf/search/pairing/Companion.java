package org.benchleaf.search.pairing;

import org.benchleaf.search.Match;
import org.benchleaf.shared.measure.MonthSet;

/// A plant that likes what another likes and shows when that one does not.
///
/// @param match the plant, its stock, and how it meets the site and the season that were looked for
/// @param fills months in which it shows and the other does not
public record Companion(Match match, MonthSet fills) {}
