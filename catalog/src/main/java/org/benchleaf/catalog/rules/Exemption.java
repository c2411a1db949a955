package org.benchleaf.catalog.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.catalog.names.NameReader;
import org.benchleaf.shared.name.BotanicalName;

/// A plant that a rule lets off by name.
///
/// @param text as in the list: a cultivar in quotes (`'Firepower'`), or a whole name
/// @param condition under which it is let off; without condition when empty
public record Exemption(String text, String condition) {
    /// Reads `'Firepower'; 'Aurea' (with a permit)`.
    static List<Exemption> readList(String cell) {
        List<Exemption> exemptions = new ArrayList<>();
        for (String piece : cell.split(";")) {
            String one = piece.strip();
            int open = one.indexOf(" (");
            if (open > 0 && one.endsWith(")")) {
                exemptions.add(
                        new Exemption(one.substring(0, open).strip(), one.substring(open + 2, one.length() - 1)));
            } else if (!one.isEmpty()) {
                exemptions.add(new Exemption(one, ""));
            }
        }
        return List.copyOf(exemptions);
    }

    static String write(List<Exemption> exemptions) {
        return String.join("; ", exemptions.stream().map(Exemption::toString).toList());
    }

    /// Whether it means this plant: its cultivar or selling name, or the taxon it belongs to.
    boolean means(BotanicalName plant) {
        String wanted = NameStem.fold(text);
        if (text.matches("['‘\"“].*")) {
            return plant.cultivar().map(NameStem::fold).filter(wanted::equals).isPresent()
                    || plant.tradeDesignation()
                            .map(NameStem::fold)
                            .filter(wanted::equals)
                            .isPresent();
        }
        Optional<BotanicalName> named = NameReader.read(text).known();
        return named.isPresent() && ListedName.of(text, named.get()).nearness(plant) == ListedName.Nearness.WITHIN;
    }

    @Override
    public String toString() {
        return text + (condition.isEmpty() ? "" : " (" + condition + ")");
    }
}
