package org.benchleaf.shared.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// Where a rule holds: one or more jurisdictions.
///
/// @param places at least one
public record RuleArea(List<Jurisdiction> places) {
    public RuleArea {
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("a rule holds somewhere");
        }
    }

    /// Reads places parted by `;`.
    public static Reading<RuleArea> read(String text) {
        List<Jurisdiction> places = new ArrayList<>();
        for (String piece : text.split(";")) {
            switch (Jurisdiction.read(piece)) {
                case Reading.Read<Jurisdiction>(Jurisdiction place) -> places.add(place);
                case Reading.Refused<Jurisdiction>(Problem problem) -> {
                    return new Reading.Refused<>(problem);
                }
            }
        }
        return Reading.of(new RuleArea(places));
    }

    public boolean covers(Destination place) {
        return places.stream().anyMatch(one -> one.covers(place));
    }

    /// Whether it holds in some county of the region, when the place's own county is not given.
    public boolean mayCover(Destination place) {
        return !covers(place) && places.stream().anyMatch(one -> one.mayCover(place));
    }

    @Override
    public String toString() {
        return places.stream().map(Jurisdiction::toString).collect(Collectors.joining("; "));
    }
}
