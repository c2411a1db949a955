package org.benchleaf.shared.fact;

/// Who states a fact, in the words printed beside it: `USDA PLANTS`, `from memory`, `grower's list, 2026`.
///
/// @param text not blank
public record Source(String text) {
    public static final Source FROM_MEMORY = new Source("from memory");

    public Source {
        text = text.strip();
        if (text.isEmpty()) {
            throw new IllegalArgumentException("a source must be named");
        }
    }
}
