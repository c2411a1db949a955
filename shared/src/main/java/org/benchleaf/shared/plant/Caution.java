package org.benchleaf.shared.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;

/// What can hurt whom, and how. A plant without cautions is not thereby safe: absence from a list proves nothing.
///
/// @param hazard what hurts
/// @param whom whom it hurts; at least one
/// @param how in a few words, may be empty
public record Caution(Hazard hazard, Set<Creature> whom, String how) {
    public Caution {
        whom = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(whom));
        how = how.strip();
        if (whom.isEmpty()) {
            throw new IllegalArgumentException("a caution names whom it concerns");
        }
    }

    /// Reads `toxic: dogs, horses - seeds poisonous if eaten`.
    public static Reading<Caution> read(String text) {
        int colon = text.indexOf(':');
        if (colon < 0) {
            return Reading.refused("caution.form", text);
        }
        int dash = text.indexOf(" - ", colon);
        String whom = dash < 0 ? text.substring(colon + 1) : text.substring(colon + 1, dash);
        String how = dash < 0 ? "" : text.substring(dash + 3);
        return Term.read(Hazard.class, text.substring(0, colon))
                .flatMap(hazard -> Term.readSet(Creature.class, whom)
                        .flatMap(creatures -> creatures.isEmpty()
                                ? Reading.refused("caution.form", text)
                                : Reading.of(new Caution(hazard, creatures, how))));
    }

    /// Reads cautions parted by `;`. `none known` is an empty list.
    public static Reading<List<Caution>> readList(String text) {
        List<Caution> cautions = new ArrayList<>();
        if (text.strip().equalsIgnoreCase("none known")) {
            return Reading.of(List.of());
        }
        for (String piece : text.split(";")) {
            switch (read(piece.strip())) {
                case Reading.Read<Caution>(Caution caution) -> cautions.add(caution);
                case Reading.Refused<Caution>(Problem problem) -> {
                    return new Reading.Refused<>(problem);
                }
            }
        }
        return Reading.of(List.copyOf(cautions));
    }

    /// The form that [#readList] reads back.
    public static String write(List<Caution> cautions) {
        return cautions.isEmpty()
                ? "none known"
                : cautions.stream().map(Caution::toString).collect(Collectors.joining("; "));
    }

    @Override
    public String toString() {
        String creatures = whom.stream().map(Term::term).collect(Collectors.joining(", "));
        return hazard.term() + ": " + creatures + (how.isEmpty() ? "" : " - " + how);
    }
}
