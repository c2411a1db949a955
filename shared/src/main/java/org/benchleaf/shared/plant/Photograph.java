package org.benchleaf.shared.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// A photograph of a plant: a file in the shop's folder of photographs, who took it and under which license it may be
/// shown.
///
/// @param file a bare file name of a JPEG or PNG: letters, digits, blanks and `. _ - ' ( )`, never a
/// folder
/// @param credit who took it; empty for the shop's own
/// @param license such as `CC BY 4.0`; empty for the shop's own
public record Photograph(String file, String credit, String license) {
    /// Longest file name, in characters.
    public static final int LONGEST = 120;

    private static final Pattern FILE =
            Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._ '’()×-]*\\.(jpe?g|png)", Pattern.CASE_INSENSITIVE);

    private static final Pattern WRITTEN = Pattern.compile(
            "(.+?\\.(?:jpe?g|png))(?:\\s+by\\s+(.+?))?(?:\\s*\\(([^()]*)\\))?", Pattern.CASE_INSENSITIVE);

    public Photograph {
        file = file.strip();
        credit = credit.strip();
        license = license.strip();
        if (!isFileName(file)) {
            throw new IllegalArgumentException("no file name of a photograph: " + file);
        }
    }

    /// Whether it is the bare name of a picture file, so that it cannot lead out of its folder.
    public static boolean isFileName(String text) {
        return text.length() <= LONGEST && FILE.matcher(text).matches();
    }

    /// Reads `oak.jpg`, `oak.jpg by A. Grower`, `oak.jpg (CC0 1.0)` or `oak.jpg by A. Grower (CC BY 4.0)`.
    public static Reading<Photograph> read(String text) {
        Matcher parts = WRITTEN.matcher(text.strip());
        return parts.matches() && isFileName(parts.group(1))
                ? Reading.of(new Photograph(
                        parts.group(1),
                        Objects.requireNonNullElse(parts.group(2), ""),
                        Objects.requireNonNullElse(parts.group(3), "")))
                : Reading.refused("photograph.form", text);
    }

    /// Reads photographs parted by `;`, the one to show first; at least one.
    public static Reading<List<Photograph>> readList(String text) {
        List<Photograph> photographs = new ArrayList<>();
        for (String piece : text.split(";")) {
            switch (read(piece)) {
                case Reading.Read<Photograph>(Photograph photograph) -> photographs.add(photograph);
                case Reading.Refused<Photograph>(Problem problem) -> {
                    return new Reading.Refused<>(problem);
                }
            }
        }
        return photographs.isEmpty() ? Reading.refused("photograph.form", text) : Reading.of(List.copyOf(photographs));
    }

    /// The form that [#readList] reads back.
    public static String write(List<Photograph> photographs) {
        return photographs.stream().map(Photograph::toString).collect(Collectors.joining("; "));
    }

    @Override
    public String toString() {
        return file + (credit.isEmpty() ? "" : " by " + credit) + (license.isEmpty() ? "" : " (" + license + ")");
    }
}
