package org.benchleaf.app.service;

import java.util.function.IntConsumer;
import org.benchleaf.render.PressSettings;

/// How something is printed.
///
/// @param press how pages are put on the printer
/// @param checked whether all pages are looked through before the first is written
/// @param strict whether nothing is printed when something was found
/// @param progress hears how many pages are written
public record PressOrder(PressSettings press, boolean checked, boolean strict, IntConsumer progress) {
    /// Checked, on a printer that does nothing wrong.
    public static final PressOrder USUAL = new PressOrder(PressSettings.PLAIN, true, false, pages -> {});
}
