package org.benchleaf.render.figure;

/// Fills the outline of a crown.
interface Crowns {
    /// A dense crown.
    ///
    /// @param bottom height of its lower edge
    /// @param half greatest half width
    /// @param leafLength length of a leaf in points
    void dense(Profile profile, double centerX, double bottom, double top, double half, double leafLength);

    /// A flat cloud, as on a layered tree.
    void cloud(double cx, double cy, double half, double height, double leafLength);
}
