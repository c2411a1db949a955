package org.benchleaf.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.content.PriceTier;
import org.benchleaf.content.Telling;
import org.benchleaf.shared.stock.ContainerNaming;

/// How a shop wants its plants told: what it calls container classes, and whom it believes.
///
/// @param containers what container classes are called
/// @param sources whom it believes when sources disagree, the best first, after its own word
/// @param telling how much of its stock strangers are told; staff is told everything
/// @param look of its paper
/// @param tiers what kinds of customers pay; the catalog's price is wholesale
public record Choices(
        ContainerNaming containers, List<String> sources, Telling telling, ShopLook look, List<PriceTier> tiers) {
    /// Classes by number; of reference works the newest is believed.
    public static final Choices USUAL = new Choices(ContainerNaming.NUMBER, List.of());

    /// Stands for the shop's own word, which is always believed first.
    private static final String OWN = "shop";

    /// Strangers are told everything, and paper looks as usual.
    public Choices(ContainerNaming containers, List<String> sources) {
        this(containers, sources, Telling.ALL, ShopLook.USUAL, List.of());
    }

    public Choices {
        sources = List.copyOf(sources);
        tiers = List.copyOf(tiers);
    }

    static Optional<ContainerNaming> containers(String text) {
        return switch (text.strip()) {
            case "", "number" -> Optional.of(ContainerNaming.NUMBER);
            case "gallon" -> Optional.of(ContainerNaming.GALLON);
            default -> Optional.empty();
        };
    }

    /// Reads `public`, `coarse` or `hidden` for counts and `public` or `hidden` for prices.
    ///
    /// @return empty when either is something else
    static Optional<Telling> telling(String counts, String prices) {
        Optional<Telling.Counts> exactly = switch (counts.strip()) {
            case "", "public" -> Optional.of(Telling.Counts.EXACT);
            case "coarse" -> Optional.of(Telling.Counts.COARSE);
            case "hidden" -> Optional.of(Telling.Counts.HIDDEN);
            default -> Optional.empty();
        };
        return switch (prices.strip()) {
            case "", "public" -> exactly.map(told -> new Telling(told, true, Optional.empty()));
            case "hidden" -> exactly.map(told -> new Telling(told, false, Optional.empty()));
            default -> Optional.empty();
        };
    }

    String countsText() {
        return switch (telling.counts()) {
            case EXACT -> "public";
            case COARSE -> "coarse";
            case HIDDEN -> "hidden";
        };
    }

    String pricesText() {
        return telling.prices() ? "public" : "hidden";
    }

    /// Reads `shop, "USDA PLANTS", Rutgers`; `shop` may stand first or be left out.
    ///
    /// @return empty when `shop` stands elsewhere, or a quote is not closed
    static Optional<List<String>> sources(String text) {
        List<String> sources = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        boolean quoted = false;
        for (char letter : (text + ",").toCharArray()) {
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == ',' && !quoted) {
                sources.add(piece.toString().strip());
                piece.setLength(0);
            } else {
                piece.append(letter);
            }
        }
        sources.removeIf(String::isEmpty);
        if (!sources.isEmpty() && sources.getFirst().equalsIgnoreCase(OWN)) {
            sources.removeFirst();
        }
        boolean misplaced = quoted || sources.stream().anyMatch(OWN::equalsIgnoreCase);
        return misplaced ? Optional.empty() : Optional.of(sources);
    }

    String sourcesText() {
        StringBuilder text = new StringBuilder(OWN);
        for (String source : sources) {
            text.append(", \"").append(source.replace('"', '\'')).append('"');
        }
        return text.toString();
    }
}
