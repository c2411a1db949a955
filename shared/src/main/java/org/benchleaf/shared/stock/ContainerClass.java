package org.benchleaf.shared.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// The container classes of the American Standard for Nursery Stock, each a range of volumes.
///
/// A class is not a gallon: a #1 holds 152 to 251 cubic inches, a US gallon 231. Between the classes lie gaps.
///
/// Source: ANSI Z60.1 (2004 and 2014), class table; volumes from memory.
public enum ContainerClass {
    SP1("#SP1", 6.5, 8),
    SP2("#SP2", 13, 15),
    SP3("#SP3", 20, 30),
    SP4("#SP4", 51, 63),
    SP5("#SP5", 93, 136),
    NO_1("#1", 152, 251),
    NO_2("#2", 320, 474),
    NO_3("#3", 628, 742),
    NO_5("#5", 785, 1_242),
    NO_7("#7", 1_337, 1_790),
    NO_10("#10", 2_080, 2_646),
    NO_15("#15", 2_768, 3_696),
    NO_20("#20", 4_520, 5_152),
    NO_25("#25", 5_775, 6_861),
    NO_45("#45", 9_356, 11_434),
    NO_65("#65", 13_514, 16_517),
    NO_95("#95", 20_790, 25_410, "#100");

    private final String mark;
    private final double minCubicInches;
    private final double maxCubicInches;
    private final List<String> otherMarks;

    ContainerClass(String mark, double minCubicInches, double maxCubicInches, String... otherMarks) {
        this.mark = mark;
        this.minCubicInches = minCubicInches;
        this.maxCubicInches = maxCubicInches;
        this.otherMarks = List.of(otherMarks);
    }

    /// `#3`
    public String mark() {
        return mark;
    }

    public double minCubicInches() {
        return minCubicInches;
    }

    public double maxCubicInches() {
        return maxCubicInches;
    }

    /// The class with this mark: `#3`, `# 3`, `#sp4`, `no. 3`.
    public static Optional<ContainerClass> ofMark(String text) {
        String wanted = text.strip().toUpperCase(java.util.Locale.ROOT).replaceAll("^(?:#|NO\\.?)\\s*", "#");
        return Arrays.stream(values())
                .filter(candidate -> candidate.mark.equals(wanted) || candidate.otherMarks.contains(wanted))
                .findFirst();
    }

    /// The class of a pot, empty where the volume lies in a gap between classes.
    ///
    /// @param cubicInches volume in cubic inches
    public static Optional<ContainerClass> ofVolume(double cubicInches) {
        return Arrays.stream(values())
                .filter(candidate -> candidate.minCubicInches <= cubicInches && cubicInches <= candidate.maxCubicInches)
                .findFirst();
    }
}
