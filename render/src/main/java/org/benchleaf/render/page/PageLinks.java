package org.benchleaf.render.page;

import java.util.List;

/// Where a live page leads besides its own plant.
///
/// @param instead what to buy while the plant is gone; empty while it is here
/// @param insteadOf what published lists name the plant in the place of, and who says so: a line each
/// @param fruit what the plant needs for its fruit; empty when nothing is to be said
/// @param partners that serve it
public record PageLinks(List<PageLink> instead, List<String> insteadOf, String fruit, List<PageLink> partners) {
    public static final PageLinks NONE = new PageLinks(List.of(), List.of(), "", List.of());

    public PageLinks {
        instead = List.copyOf(instead);
        insteadOf = List.copyOf(insteadOf);
        partners = List.copyOf(partners);
    }
}
