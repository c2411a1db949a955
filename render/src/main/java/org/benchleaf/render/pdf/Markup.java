package org.benchleaf.render.pdf;

import java.util.Base64;
import java.util.Locale;

/// HTML of drawings.
final class Markup {
    private Markup() {}

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /// A picture inside the page, so that a page is one file.
    ///
    /// @param aspect of the box that it fills, width by height
    static String picture(String type, byte[] bytes, double aspect, String words) {
        return "<img src=\"data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes) + "\" alt=\""
                + escaped(words) + "\" style=\"aspect-ratio:" + String.format(Locale.ROOT, "%.4f", aspect) + "\">";
    }
}
