package org.benchleaf.render.pdf;

import java.util.List;
import java.util.Map;

/// One page about to be printed.
///
/// @param name what it is about, for messages
/// @param versions the page as XHTML, roomiest first; the first that fits one page is printed
/// @param drawings by the `src` of their `img`
public record PrintPage(
        String name, List<java.util.function.Supplier<String>> versions, Map<String, Drawing> drawings) {
    public PrintPage {
        versions = List.copyOf(versions);
        drawings = Map.copyOf(drawings);
    }
}
