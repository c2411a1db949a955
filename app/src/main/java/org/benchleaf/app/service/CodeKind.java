package org.benchleaf.app.service;

/// What printed codes say.
public enum CodeKind {
    /// The address of the plant's live page.
    LIVE,
    /// The item's trade number as a web address (GS1 Digital Link), which leads to the same page; the live page's own
    /// address for items without a trade number.
    DIGITAL_LINK
}
