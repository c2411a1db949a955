package org.benchleaf.app;

import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import org.benchleaf.content.Palette;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.shared.color.Srgb;

/// How a shop wants its paper to look.
///
/// @param palette name of its inks
/// @param accent an ink of the shop's own for headings and lines; it stands out from white paper by 4.5 or more
/// @param paper of whole-page documents, when nobody says otherwise
public record ShopLook(String palette, Optional<Srgb> accent, SheetFormat paper) {
    /// The usual inks on letter paper.
    public static final ShopLook USUAL = new ShopLook(Palette.USUAL, Optional.empty(), SheetFormat.LETTER);

    /// WCAG 2.x, success criterion 1.4.3.
    private static final double LEAST_CONTRAST = 4.5;

    private static final Srgb WHITE = new Srgb(0xFF, 0xFF, 0xFF);

    public ShopLook {
        if (accent.filter(ink -> ink.contrastWith(WHITE) < LEAST_CONTRAST).isPresent()) {
            throw new IllegalArgumentException("an accent stands out from white by 4.5 or more; got " + accent.get());
        }
    }

    /// Reads the settings that begin with `palette`, `accent` and `paper`.
    static ShopLook read(Properties properties, SettingsTrouble trouble) {
        String format = properties.getProperty("paper", "").strip().toUpperCase(Locale.ROOT);
        if (!format.isEmpty() && !format.equals("LETTER") && !format.equals("A4")) {
            throw trouble.value("paper", format.toLowerCase(Locale.ROOT), "letter, a4");
        }
        return new ShopLook(
                properties.getProperty("palette", Palette.USUAL).strip(),
                accent(properties.getProperty("accent", "").strip(), trouble),
                format.isEmpty() ? SheetFormat.LETTER : SheetFormat.valueOf(format));
    }

    private static Optional<Srgb> accent(String text, SettingsTrouble trouble) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Srgb ink = Srgb.read(text).toOptional().orElseThrow(() -> trouble.value("accent", text, "#7a3f1d"));
        double contrast = ink.contrastWith(WHITE);
        if (contrast < LEAST_CONTRAST) {
            throw trouble.tooPale("accent", text, contrast);
        }
        return Optional.of(ink);
    }

    String accentText() {
        return accent.map(ink -> ink.toString().toLowerCase(Locale.ROOT)).orElse("");
    }

    String paperText() {
        return paper.name().toLowerCase(Locale.ROOT);
    }
}
