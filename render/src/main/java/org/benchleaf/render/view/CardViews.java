package org.benchleaf.render.view;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.benchleaf.content.Wording;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.pdf.Drawing;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;

/// Sets bench cards, each by the roomiest plan that its words leave room for.
public final class CardViews {
    /// What another plan may cure; anything else is wrong by every plan.
    private static final java.util.Set<String> TOO_MUCH = java.util.Set.of("print.overflow", "print.page-overflow");

    private final List<CardPlan> plans;
    private final Wording words;
    private final FontShelf shelf;
    private final PhotoShelf photos;

    public CardViews(CardFormat format, Wording words, FontShelf shelf, PhotoShelf photos) {
        this.plans = CardPlan.all(format);
        this.words = words;
        this.shelf = shelf;
        this.photos = photos;
    }

    /// A card and its drawings.
    ///
    /// @param alternatives words by the `src` of the drawings
    record Set(CardView view, Map<String, Drawing> drawings, Map<String, String> alternatives) {}

    /// @throws PrintRefused when a text does not fit or cannot be printed
    Set set(BenchCard card) {
        PrintRefused refusal = null;
        if (card.shop().logo().isPresent()) {
            for (CardPlan plan : plans.stream().filter(CardPlan::picture).toList()) {
                try {
                    return new CardLayout(plan, words, shelf, photos, card, true).set();
                } catch (PrintRefused refused) {
                    refusal = curable(refused);
                }
            }
        }
        // what people must know needs the logo's room
        for (CardPlan plan : plans) {
            try {
                return new CardLayout(plan, words, shelf, photos, card, false).set();
            } catch (PrintRefused refused) {
                refusal = curable(refused);
            }
        }
        throw Objects.requireNonNull(refusal);
    }

    /// @throws PrintRefused when no other plan cures it
    static PrintRefused curable(PrintRefused refused) {
        if (!TOO_MUCH.contains(refused.problem().key())) {
            throw refused;
        }
        return refused;
    }
}
