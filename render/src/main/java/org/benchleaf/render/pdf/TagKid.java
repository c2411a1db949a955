package org.benchleaf.render.pdf;

/// What an element of the structure holds: elements, runs of marked content, links.
sealed interface TagKid permits TagNode, TagRun, TagLink {
    /// Whether nothing of it was painted.
    boolean isEmpty();
}
