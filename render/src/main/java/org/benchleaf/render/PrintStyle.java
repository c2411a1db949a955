package org.benchleaf.render;

import java.util.Locale;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.stock.ContainerNaming;

/// How pages are worded.
///
/// @param language a language of the content pack; `en` is always there
/// @param lengths units of lengths
/// @param containers what the shop calls container classes
public record PrintStyle(Locale language, LengthStyle lengths, ContainerNaming containers) {
    /// English, feet and inches.
    public static final PrintStyle ENGLISH = new PrintStyle(Locale.ENGLISH, LengthStyle.IMPERIAL);

    /// Container classes by their numbers.
    public PrintStyle(Locale language, LengthStyle lengths) {
        this(language, lengths, ContainerNaming.NUMBER);
    }
}
