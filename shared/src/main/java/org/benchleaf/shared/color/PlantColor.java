package org.benchleaf.shared.color;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// One color of a plant: the word for it and its appearance in the garden.
///
/// @param word a color word, such as `deep red`; lower case
/// @param srgb as seen by daylight
public record PlantColor(String word, Srgb srgb) {
    private static final Pattern WRITTEN = Pattern.compile("([\\p{L}][\\p{L} -]*?)\\s*(#[0-9A-Fa-f]{6})?");

    /// Reads `deep red #8B1E2D`; without a value, the typical color of the word's family stands in.
    public static Reading<PlantColor> read(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            return Reading.refused("color.unknown", text);
        }
        String word = matcher.group(1).toLowerCase(java.util.Locale.ROOT);
        Optional<ColorFamily> family = ColorFamily.ofWord(word);
        if (matcher.group(2) == null) {
            return family.<Reading<PlantColor>>map(known -> Reading.of(new PlantColor(word, known.typical())))
                    .orElseGet(() -> Reading.refused("color.unknown", text));
        }
        return Srgb.read(matcher.group(2)).map(srgb -> new PlantColor(word, srgb));
    }

    /// Reads colors parted by `;`, the most typical first. `none` is an empty list: known to have no such color.
    public static Reading<List<PlantColor>> readList(String text) {
        List<PlantColor> colors = new ArrayList<>();
        if (text.strip().equalsIgnoreCase("none")) {
            return Reading.of(List.of());
        }
        for (String piece : text.split("[;,|]")) {
            switch (read(piece)) {
                case Reading.Read<PlantColor>(PlantColor color) -> colors.add(color);
                case Reading.Refused<PlantColor>(Problem problem) -> {
                    return new Reading.Refused<>(problem);
                }
            }
        }
        return Reading.of(List.copyOf(colors));
    }

    /// The form that [#readList] reads back.
    public static String write(List<PlantColor> colors) {
        return colors.isEmpty()
                ? "none"
                : colors.stream().map(PlantColor::toString).collect(Collectors.joining("; "));
    }

    /// The family of its word, or else the family that looks nearest (CIEDE2000).
    public ColorFamily family() {
        return ColorFamily.ofWord(word).orElseGet(() -> {
            ColorFamily nearest = ColorFamily.WHITE;
            for (ColorFamily candidate : ColorFamily.values()) {
                if (differenceTo(candidate) < differenceTo(nearest)) {
                    nearest = candidate;
                }
            }
            return nearest;
        });
    }

    /// CIEDE2000 to a family's typical swatch.
    public double differenceTo(ColorFamily family) {
        return srgb.lab().differenceTo(family.typical().lab());
    }

    /// `deep red #8B1E2D`
    @Override
    public String toString() {
        return word + " " + srgb;
    }
}
