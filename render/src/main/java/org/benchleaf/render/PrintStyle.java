package org.benchleaf.render;

import java.util.Locale;
import org.benchleaf.shared.measure.LengthStyle;

/// How pages are worded.
///
/// @param language a language of the content pack; `en` is always there
/// @param lengths units of lengths
public record PrintStyle(Locale language, LengthStyle lengths) {
    /// English, feet and inches.
    public static final PrintStyle ENGLISH = new PrintStyle(Locale.ENGLISH, LengthStyle.IMPERIAL);
}
