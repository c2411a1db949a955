package org.benchleaf.app.web;

/// Text as it stands in markup that no template makes.
final class Markup {
    private Markup() {}

    /// For text between tags.
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
