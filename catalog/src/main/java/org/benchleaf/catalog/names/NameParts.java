package org.benchleaf.catalog.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.benchleaf.shared.name.Infraspecific;

/// The parts of one name while it is being read; filled once each, what does not fit goes to the rest.
final class NameParts {
    static final Pattern GENUS = Pattern.compile("\\p{Lu}\\p{Ll}+(?:-\\p{L}+)*");
    static final Pattern EPITHET = Pattern.compile("\\p{Ll}+(?:-\\p{Ll}+)*");

    HybridMark genusMark = HybridMark.NONE;
    String genus = "";
    Optional<Epithet> species = Optional.empty();
    Optional<Infraspecific> below = Optional.empty();
    Optional<String> group = Optional.empty();
    Optional<String> cultivar = Optional.empty();
    Optional<String> trade = Optional.empty();
    private final List<String> rest = new ArrayList<>();

    void leave(String piece) {
        rest.add(piece);
    }

    String rest() {
        return String.join(" ", rest);
    }

    boolean isCultivated() {
        return group.isPresent() || cultivar.isPresent() || trade.isPresent();
    }

    Optional<BotanicalName> name() {
        return GENUS.matcher(genus).matches()
                ? Optional.of(new BotanicalName(genusMark, genus, species, below, group, cultivar, trade))
                : Optional.empty();
    }
}
