package org.benchleaf.shared.need;

/// How a wish counts that is not met, or not met as well as can be.
public enum Counting {
    /// Met or not: what a customer asks for. Degrees only part plants that meet equally much.
    WHOLE,
    /// As far as it is met: what is taken from another plant. A little too tall is a little worse, and what is known
    /// for it counts more than what will do.
    BY_DEGREE
}
