package org.benchleaf.render.page;

import java.util.List;

/// Where a live page leads besides its own plant.
///
/// @param instead what to buy while the plant is gone; empty while it is here
/// @param fruit what the plant needs for its fruit; empty when nothing is to be said
/// @param partners that serve it
public record PageLinks(List<PageLink> instead, String fruit, List<PageLink> partners) {
    public static final PageLinks NONE = new PageLinks(List.of(), "", List.of());

    public PageLinks {
        instead = List.copyOf(instead);
        partners = List.copyOf(partners);
    }
}
