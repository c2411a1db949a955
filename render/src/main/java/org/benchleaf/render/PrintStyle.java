package org.benchleaf.render;

import java.util.Locale;
import org.benchleaf.content.Telling;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.stock.ContainerNaming;

/// How pages are worded.
///
/// @param language a language of the content pack; `en` is always there
/// @param lengths units of lengths
/// @param containers what the shop calls container classes
/// @param telling how much of its stock the shop tells
public record PrintStyle(Locale language, LengthStyle lengths, ContainerNaming containers, Telling telling) {
    /// English, feet and inches.
    public static final PrintStyle ENGLISH = new PrintStyle(Locale.ENGLISH, LengthStyle.IMPERIAL);

    /// Everything is told.
    public PrintStyle(Locale language, LengthStyle lengths, ContainerNaming containers) {
        this(language, lengths, containers, Telling.ALL);
    }

    /// Container classes by their numbers.
    public PrintStyle(Locale language, LengthStyle lengths) {
        this(language, lengths, ContainerNaming.NUMBER);
    }

    /// The same, telling less.
    public PrintStyle telling(Telling less) {
        return new PrintStyle(language, lengths, containers, less);
    }
}
