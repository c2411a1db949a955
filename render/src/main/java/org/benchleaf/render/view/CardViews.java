package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.render.figure.Icons;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Photo;
import org.benchleaf.render.pdf.CodeDrawing;
import org.benchleaf.render.pdf.Drawing;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FigureDrawing;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.plant.Caution;

/// Sets one bench card: measures the words, and gives what height remains to the year ring and the icons.
public final class CardViews {
    private static final double POINT_MM = 25.4 / 72;

    private final List<CardPlan> plans;
    private final Wording words;
    private final FontShelf shelf;
    private final PhotoShelf photos;
    private final Typesetter typesetter;

    public CardViews(org.benchleaf.render.CardFormat format, Wording words, FontShelf shelf, PhotoShelf photos) {
        this.photos = photos;
        this.plans = CardPlan.all(format);
        this.words = words;
        this.shelf = shelf;
        this.typesetter = new Typesetter(shelf);
    }

    /// A card and its drawings.
    public record Set(CardView view, Map<String, Drawing> drawings) {}

    /// @throws PrintRefused when a text does not fit or cannot be printed
    public Set set(BenchCard card) {
        PrintRefused refusal = null;
        for (CardPlan plan : plans) {
            try {
                return new OneCard(plan).set(card);
            } catch (PrintRefused tooMuch) {
                refusal = tooMuch;
            }
        }
        throw java.util.Objects.requireNonNull(refusal);
    }

    /// One card by one plan.
    private final class OneCard {
        private final CardPlan plan;

        OneCard(CardPlan plan) {
            this.plan = plan;
        }

        Set set(BenchCard card) {
            String subject = card.title().botanical().toString();
            Characters characters = new Characters(shelf, subject);
            characters.checked(subject, "name", Face.NAMES_STRONG, Face.NAMES_STRONG_ITALIC);
            double inner = plan.innerWidth() / POINT_MM;
            TextBlock name = typesetter.set(
                    Typesetter.words(card.title().botanical(), true), inner, plan.name(), subject, "name");
            TextBlock common = card.title().commonNames().stream()
                    .findFirst()
                    .map(text -> block(characters, text, "common name", Face.FACTS, inner, plan.common(), subject))
                    .orElseGet(TextBlock::none);
            TextBlock why = card.whyNow()
                    .map(text -> block(characters, text, "selling note", Face.NAMES_ITALIC, inner, plan.why(), subject))
                    .orElseGet(TextBlock::none);
            double commonTop = plan.margin() + name.height() + 1.8;
            double ruleTop = commonTop + common.height() + (common.isEmpty() ? 2.4 : 3.4);
            double whyTop = ruleTop + 3.2;
            double middleTop = whyTop + why.height() + (why.isEmpty() ? 1 : 4);

            double footTop = plan.height() - plan.margin() - 5.5 - plan.foot();
            List<CardView.CardCaution> cautions = cautions(card, characters, footTop - 4, subject);
            double middleBottom =
                    cautions.isEmpty() ? footTop - 4 : cautions.getFirst().top() - 4;
            double middle = middleBottom - middleTop;
            if (middle < plan.leastMiddle()) {
                throw new PrintRefused(
                        Problem.of("print.page-overflow", subject).with("name", subject));
            }

            Map<String, Drawing> drawings = new LinkedHashMap<>();
            Optional<CardView.CardPhoto> photo = card.photo()
                    .map(shown -> photo(
                            shown,
                            plan.innerWidth() * (CardIcons.any(card) ? 0.5 : 1),
                            characters,
                            middleTop,
                            middle,
                            drawings,
                            subject));
            double ring = photo.isPresent() || card.year().isUnknown()
                    ? 0
                    : Math.min(Math.min(middle, plan.mostRing()), plan.innerWidth() * 0.56);
            if (ring > 0) {
                drawings.put("figure:ring", new FigureDrawing(YearRing.draw(card.year(), subject, words)));
            }
            boolean wordsOnly = ring == 0 && photo.isEmpty() && !CardIcons.any(card);
            // a card that knows only its name carries it in the middle instead of leaving a hole
            double lower = wordsOnly ? round(middle * 0.42) : 0;
            double iconsLeft = photo.map(shown -> plan.margin() + shown.width() + 6)
                    .orElse(ring == 0 ? plan.margin() : plan.margin() - 2 + ring + 5);
            List<CardIcon> icons = new CardIcons(plan, words, typesetter)
                    .set(
                            card,
                            middleTop,
                            middle,
                            plan.width() - plan.margin() - iconsLeft - CardIcons.SIDE - 2.6,
                            drawings,
                            subject);
            if (!cautions.isEmpty()) {
                drawings.put("figure:caution", new FigureDrawing(Icons.caution(words.text("sheet.cautions"))));
            }
            CodeImage code = CodeImage.of(card.link());
            OptionalInt dots = code.dotsThatFit(plan.code());
            CodeDrawing drawn =
                    new CodeDrawing(code, dots.orElseThrow(() -> LabelViews.codeTooSmall(code, plan.code(), subject)));
            drawings.put("figure:code", drawn);
            CardView view = new CardView(
                    words.text("card.title", Map.of("name", subject)),
                    plan.style(),
                    name,
                    common,
                    why,
                    round(plan.margin() + lower),
                    round(commonTop + lower),
                    round(ruleTop + lower),
                    round(whyTop + lower),
                    round(middleTop + (middle - ring) / 2),
                    plan.margin() - 2,
                    round(ring),
                    round(iconsLeft),
                    icons,
                    plan.iconType().largest(),
                    cautions,
                    round(footTop),
                    card.price()
                            .map(words::money)
                            .map(text -> characters.checked(text, "price", Face.FACTS_STRONG))
                            .orElse(""),
                    card.stockSize()
                            .map(size -> block(
                                    characters,
                                    words.size(size, card.form()),
                                    "size",
                                    Face.FACTS_STRONG,
                                    (plan.innerWidth() - plan.code() - 4) / POINT_MM,
                                    sizeType(card),
                                    subject))
                            .orElseGet(TextBlock::none),
                    each(card),
                    round(drawn.width() * POINT_MM),
                    words.text("sheet.call"),
                    characters.checked(card.shop().name(), "shop", Face.FACTS_STRONG),
                    characters.checked(card.shop().addressLine(), "shop", Face.FACTS),
                    card.link().plant().toString(),
                    photo.stream().toList());
            return new Set(view, drawings);
        }

        /// A photograph takes the place of the ring: as large as the middle allows, cut no more than it must be.
        ///
        /// @param most width in mm
        private CardView.CardPhoto photo(
                Photo photo,
                double most,
                Characters characters,
                double middleTop,
                double middle,
                Map<String, Drawing> drawings,
                String subject) {
            String credit =
                    characters.checked(words.credit(photo.credit(), photo.license()), "photo credit", Face.FACTS);
            double room = middle - (credit.isEmpty() ? 0 : 3.4);
            double aspect = Math.clamp(photos.aspect(photo.file(), subject), 0.7, 1.35);
            double width = Math.min(most, room * aspect);
            double height = Math.min(room, width / aspect);
            // a lying photograph in a tall middle may be cut at its sides to stand a little taller
            height = Math.min(room, Math.max(height, width * 0.92));
            drawings.put("figure:photo", photos.fill(photo.file(), subject, width / POINT_MM, height / POINT_MM));
            double top = middleTop + (room - height) / 2;
            return new CardView.CardPhoto(round(top), plan.margin(), round(width), credit, round(top + height + 0.8));
        }

        /// The word `each`, where the price leaves room for it.
        private String each(BenchCard card) {
            String each = words.text("card.each");
            double room = (plan.innerWidth() - plan.code() - 2) / POINT_MM;
            double price = card.price()
                    .map(money -> shelf.width(Face.FACTS_STRONG, words.money(money), plan.price()))
                    .orElse(room);
            if (price > room && card.price().isPresent()) {
                throw new PrintRefused(
                        Problem.of("print.overflow", words.money(card.price().get()))
                                .with("name", card.title().botanical().toString())
                                .with("field", "price")
                                .with("least", Long.toString(Math.round(plan.price()))));
            }
            return price + shelf.width(Face.FACTS, " " + each, plan.price() * 0.32) <= room ? each : "";
        }

        private TypeRange sizeType(BenchCard card) {
            return card.price().isPresent() ? new TypeRange(15, 12, 9, 2, 1.15) : new TypeRange(30, 16, 11, 2, 1.12);
        }

        private TextBlock block(
                Characters characters,
                String text,
                String field,
                Face face,
                double width,
                TypeRange range,
                String subject) {
            String clean = characters.checked(text, field, face);
            return clean.isEmpty()
                    ? TextBlock.none()
                    : typesetter.set(Typesetter.words(clean, face), width, range, subject, field);
        }

        /// Cautions stand on the foot, the last one lowest.
        private List<CardView.CardCaution> cautions(
                BenchCard card, Characters characters, double bottom, String subject) {
            double measure = (plan.innerWidth() - 7.5) / POINT_MM;
            List<TextBlock> blocks = card.cautions().stream()
                    .map(caution -> block(
                            characters,
                            plan.briefCautions()
                                    ? words.caution(new Caution(caution.hazard(), caution.whom(), ""))
                                    : words.caution(caution),
                            "caution",
                            Face.FACTS,
                            measure,
                            plan.caution(),
                            subject))
                    .toList();
            double top = bottom
                    - blocks.stream().mapToDouble(block -> block.height() + 1.4).sum();
            List<CardView.CardCaution> placed = new ArrayList<>();
            for (TextBlock block : blocks) {
                placed.add(new CardView.CardCaution(round(top), block));
                top += block.height() + 1.4;
            }
            return placed;
        }
    }

    private static double round(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }
}
