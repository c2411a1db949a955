package org.benchleaf.catalog.intake;

import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.shared.Problem;

/// A fact that reads well and still looks wrong.
///
/// @param attribute which fact
/// @param problem what is odd about it
/// @param contradicts whether it cannot be true beside the plant's other facts; else it is only unusual
record Doubt(Attribute<?> attribute, Problem problem, boolean contradicts) {}
