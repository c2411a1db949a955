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
    public record Set(CardView view, Map<String, Drawing> drawings, Map<String, String> alternatives) {}

    /// @throws PrintRefused when a text does not fit or cannot be printed
    public Set set(BenchCard card) {
        PrintRefused refusal = null;
        for (CardPlan plan : plans) {
            try {
                return new CardLayout(plan, words, shelf, photos, card).set();
            } catch (PrintRefused tooMuch) {
                refusal = tooMuch;
            }
        }
        throw Objects.requireNonNull(refusal);
    }
}
