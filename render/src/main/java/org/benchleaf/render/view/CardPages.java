package org.benchleaf.render.view;

import java.util.List;
import java.util.Objects;
import org.benchleaf.content.Palette;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.pdf.Drawing;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PlacedPage;

/// Bench cards and signs as pages: each part of a measured card in its place, in the order in which it is read.
public final class CardPages {
    private static final double POINT_MM = TextBlock.POINT_MM;
    private static final double RULE = 0.6;
    /// Between size and price.
    private static final double OFFER_GAP_MM = 0.5;
    /// Smallest type of the shop's line.
    private static final double LEAST_SHOP = 5.5;

    private final CardViews views;
    private final FontShelf shelf;
    private final Palette palette;
    private final Typesetter typesetter;

    public CardPages(CardViews views, FontShelf shelf, Palette palette) {
        this.views = views;
        this.shelf = shelf;
        this.palette = palette;
        this.typesetter = new Typesetter(shelf);
    }

    /// @throws org.benchleaf.render.PrintRefused when a text does not fit or cannot be printed
    public PlacedPage page(BenchCard card) {
        CardViews.Set set = views.set(card);
        String subject = card.title().botanical().toString();
        return new One(set, subject).page();
    }

    /// One card in work.
    private final class One {
        private final CardViews.Set set;
        private final CardView card;
        private final CardView.Page page;
        private final String subject;
        private final Placing placing = new Placing(shelf, palette);

        One(CardViews.Set set, String subject) {
            this.set = set;
            this.card = set.view();
            this.page = card.page();
            this.subject = subject;
        }

        PlacedPage page() {
            card.logo().forEach(logo -> figure("figure:logo", logo.left(), logo.top(), logo.width()));
            placing.heading(card.name(), page.margin(), card.nameTop());
            placing.words(card.common(), page.margin(), card.commonTop(), "soft");
            rule(page.margin(), card.ruleTop(), page.inner());
            placing.words(card.why(), page.margin(), card.whyTop(), "accent");
            card.picture().forEach(this::picture);
            card.icons().forEach(this::icon);
            for (CardView.CardCaution caution : card.cautions()) {
                ornament("figure:caution", caution.left(), caution.top(), page.sign());
                placing.words(caution.text(), caution.textLeft(), caution.top(), "ink");
            }
            rule(card.foot().left(), card.foot().top(), card.foot().width());
            offer();
            code();
            shop();
            return new PlacedPage(subject, page.width(), page.height(), placing.parts());
        }

        private void picture(CardView.CardPicture picture) {
            figure(picture.figure(), picture.left(), picture.top(), picture.width());
            if (!picture.credit().isEmpty()) {
                placing.words(
                        typesetter.flow(
                                Typesetter.words(picture.credit(), Face.FACTS),
                                picture.width() / POINT_MM,
                                picture.creditType(),
                                picture.creditType() * 1.2,
                                subject,
                                "photo credit"),
                        picture.left(),
                        picture.creditTop(),
                        "quiet");
            }
        }

        private void icon(CardIcon icon) {
            ornament(icon.figure(), icon.left(), icon.top(), page.icon());
            placing.words(
                    new TextBlock(card.iconSize(), page.iconLeading(), icon.lines()),
                    icon.left() + page.iconIndent(),
                    icon.textTop(),
                    "ink");
        }

        /// Size and price, one below the other.
        private void offer() {
            CardView.Foot foot = card.foot();
            placing.words(card.size(), foot.left(), foot.offerTop(), "ink");
            if (card.price().isEmpty()) {
                return;
            }
            // without a size the price would stand beside the words above the code, which are wider than that
            double above = card.size().isEmpty()
                    ? foot.codeTop() - foot.callTop()
                    : card.size().height() + OFFER_GAP_MM;
            double top = foot.offerTop() + above;
            TextBlock price = Placing.line(card.price(), Face.FACTS_STRONG, foot.priceType(), foot.priceType() * 1.09);
            PlacedPage.Piece amount =
                    new PlacedPage.Piece(Face.FACTS_STRONG, card.price(), foot.priceType(), palette.ink("ink"));
            PlacedPage.Line line = new PlacedPage.Line(
                    foot.left(),
                    top + placing.firstBaseline(price),
                    card.each().isEmpty()
                            ? List.of(amount)
                            : List.of(
                                    amount,
                                    new PlacedPage.Piece(
                                            Face.FACTS, " " + card.each(), foot.eachType(), palette.ink("quiet"))));
            placing.add(new PlacedPage.Part.Words(false, List.of(line)));
        }

        private void code() {
            CardView.Foot foot = card.foot();
            placing.wordsAtTheRight(
                    Placing.line(card.call(), Face.FACTS_STRONG, foot.callType(), foot.callType() * 1.15),
                    page.width() - foot.callRight(),
                    foot.callTop(),
                    "ink");
            figure("figure:code", page.width() - foot.codeRight() - card.code(), foot.codeTop(), card.code());
        }

        /// The shop at the left and the plant's key at the right, which keeps its room.
        private void shop() {
            TextBlock key = Placing.line(card.key(), Face.FACTS, page.shopType(), page.shopType() * 1.25);
            double room =
                    page.inner() / POINT_MM - placing.width(key.lines().getFirst(), key.size()) - 2 * page.shopType();
            TextBlock shop = typesetter.set(
                    card.shop(),
                    room,
                    new TypeRange(page.shopType(), LEAST_SHOP, LEAST_SHOP, 2, 1.25),
                    subject,
                    "shop");
            placing.words(
                    shop,
                    page.margin(),
                    page.shopTop(),
                    face -> palette.ink(face == Face.FACTS_STRONG ? "soft" : "quiet"));
            placing.wordsAtTheRight(key, page.width() - page.margin(), page.shopTop(), "quiet");
        }

        private void rule(double left, double top, double width) {
            placing.add(new PlacedPage.Part.Rule(left, top, width, RULE, palette.ink("accent")));
        }

        private void figure(String key, double left, double top, double width) {
            placing.add(new PlacedPage.Part.Figure(
                    drawing(key),
                    left,
                    top,
                    width,
                    Objects.requireNonNull(set.alternatives().get(key))));
        }

        /// What says nothing that is not said beside it.
        private void ornament(String key, double left, double top, double width) {
            placing.add(new PlacedPage.Part.Figure(drawing(key), left, top, width, ""));
        }

        private Drawing drawing(String key) {
            return Objects.requireNonNull(set.drawings().get(key), key);
        }
    }
}
