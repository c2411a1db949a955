package org.benchleaf.render.page;

import org.benchleaf.shared.plant.Photograph;

/// The photograph that leads a page. Without one the figures carry it.
///
/// @param file its name in the shop's folder of photographs
/// @param credit who took it; empty for the shop's own
/// @param license under which it may be shown; empty for the shop's own
public record Photo(String file, String credit, String license) {
    public static Photo of(Photograph photograph) {
        return new Photo(photograph.file(), photograph.credit(), photograph.license());
    }
}
