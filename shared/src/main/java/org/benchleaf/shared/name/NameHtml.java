package org.benchleaf.shared.name;

/// A name as HTML: Latin in italics, ranks, signs and quotes in roman, the trade designation in a type of its own.
///
/// Follows ICN (preface, italics by custom) and ICNCP Art. 14 and 17; clause numbers from memory.
public final class NameHtml {
    private NameHtml() {}

    /// `<i>Acer</i> ×<i>freemanii</i> 'Jeffersred' <span class="name-trade">AUTUMN BLAZE</span>`
    public static String of(BotanicalName name) {
        StringBuilder html = new StringBuilder();
        for (NamePart part : name.parts()) {
            html.append(part.spaced() && !html.isEmpty() ? " " : "");
            String text = escaped(part.text());
            html.append(
                    switch (part.type()) {
                        case LATIN -> "<i>" + text + "</i>";
                        case ROMAN, CULTIVAR -> text;
                        case TRADE -> "<span class=\"name-trade\">" + text + "</span>";
                    });
        }
        return html.toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
