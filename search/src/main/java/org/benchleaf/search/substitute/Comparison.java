package org.benchleaf.search.substitute;

import java.util.List;

/// A substitute beside the original: what differs first, then what agrees. What is not known of the original is
/// not compared.
///
/// @param differs in the order in which it is told: what the original was bought for first
/// @param agrees in the same order
/// @param unknown aspects that matter and that the catalog does not know of the substitute
public record Comparison(List<Point> differs, List<Point> agrees, List<Aspect> unknown) {
    public Comparison {
        differs = List.copyOf(differs);
        agrees = List.copyOf(agrees);
        unknown = List.copyOf(unknown);
    }

    /// In what the substitute is better than the original.
    public List<Point> better() {
        return differs.stream().filter(Point::better).toList();
    }
}
