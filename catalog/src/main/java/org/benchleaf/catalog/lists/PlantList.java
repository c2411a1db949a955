package org.benchleaf.catalog.lists;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/// The plants of a job with their numbers.
///
/// @param name unique but for case
/// @param site where and when
/// @param lines in the order they were added
/// @param nextLine the number of the next line
/// @param version 0 for one that was never saved; each save counts one up
/// @param changedAt when it was last saved
public record PlantList(
        String name, ListSite site, List<ListLine> lines, int nextLine, int version, Optional<Instant> changedAt) {
    public PlantList {
        lines = List.copyOf(lines);
        if (name.isBlank() || name.length() > 100) {
            throw new IllegalArgumentException("a list's name has 1 to 100 characters; got " + name);
        }
    }

    public static PlantList empty(String name, ListSite site) {
        return new PlantList(name.strip(), site, List.of(), 1, 0, Optional.empty());
    }

    /// The same list with one more line.
    ///
    /// @param line makes it, given its number
    public PlantList with(IntFunction<ListLine> line) {
        List<ListLine> more = new ArrayList<>(lines);
        more.add(line.apply(nextLine));
        return new PlantList(name, site, more, nextLine + 1, version, changedAt);
    }

    /// The same list without a line.
    public PlantList without(int number) {
        return new PlantList(
                name,
                site,
                lines.stream().filter(line -> line.number() != number).toList(),
                nextLine,
                version,
                changedAt);
    }

    /// The same list with another line in the place of the one of its number.
    public PlantList replacing(ListLine line) {
        return new PlantList(
                name,
                site,
                lines.stream()
                        .map(one -> one.number() == line.number() ? line : one)
                        .toList(),
                nextLine,
                version,
                changedAt);
    }

    public PlantList at(ListSite other) {
        return new PlantList(name, other, lines, nextLine, version, changedAt);
    }

    public Optional<ListLine> line(int number) {
        return lines.stream().filter(line -> line.number() == number).findFirst();
    }
}
