package org.benchleaf.content;

/// A template, style, font, word or paper that is asked for and not there. Always a fault of the pack, never of the
/// plant.
public final class MissingContent extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final String key;

    /// @param key what is missing, such as `styles/sheet.css`
    /// @param where where it was looked for, for people
    public MissingContent(String key, String where) {
        super(key + " is missing from " + where);
        this.key = key;
    }

    /// What is missing.
    public String key() {
        return key;
    }
}
