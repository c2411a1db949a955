package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.code.CodeImage;
import org.benchleaf.render.figure.Icons;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Photo;
import org.benchleaf.render.pdf.CodeDrawing;
import org.benchleaf.render.pdf.Face;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.render.picture.Logo;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.plant.Caution;

/// One card by one plan: measures the words, and gives what room remains to the picture and the icons.
///
/// Upright, the middle holds picture and icons side by side, cautions and foot below. Lying, the picture stands at the
/// left down to the edge, and icons, cautions and foot at its right; without a picture, icons and cautions take the
/// left.
final class CardLayout {
    private static final double POINT_MM = TextBlock.POINT_MM;

    /// Widths of a picture that are tried, as shares of the usual one.
    private static final List<Double> NARROWER = List.of(1.0, 0.88, 0.76);

    /// Light, water, winter and size.
    private static final int MOST_ACROSS = 4;

    private final CardPlan plan;
    private final Wording words;
    private final FontShelf shelf;
    private final PhotoShelf photos;
    private final BenchCard card;
    private final String subject;
    private final Characters characters;
    private final Typesetter typesetter;
    private final boolean logo;
    private final Figures figures = new Figures();

    /// @param logo whether the shop's logo is shown, when it has one
    CardLayout(CardPlan plan, Wording words, FontShelf shelf, PhotoShelf photos, BenchCard card, boolean logo) {
        this.logo = logo;
        this.plan = plan;
        this.words = words;
        this.shelf = shelf;
        this.photos = photos;
        this.card = card;
        this.subject = card.title().botanical().toString();
        this.characters = new Characters(shelf, subject);
        this.typesetter = new Typesetter(shelf);
    }

    CardViews.Set set() {
        boolean shown =
                plan.picture() && (card.photo().isPresent() || !card.year().isUnknown());
        if (!plan.wide() || shown) {
            return set(shown, plan.wide() ? Split.PICTURE : Split.NONE, plan.wide() || !shown ? 2 : 1);
        }
        // what lies without a picture is set across its whole width, where that leaves room for everything
        PrintRefused refusal = tooMuch();
        for (Split split : List.of(Split.NONE, Split.CAUTIONS, Split.WORDS)) {
            for (int columns : split == Split.NONE ? List.of(2, MOST_ACROSS) : List.of(2, 1)) {
                try {
                    return set(false, split, columns);
                } catch (PrintRefused refused) {
                    refusal = CardViews.curable(refused);
                }
            }
        }
        throw refusal;
    }

    /// What stands at the left of a card below its names, down to the edge.
    private enum Split {
        /// Nothing: all is set across.
        NONE,
        /// The picture; icons, cautions and foot at its right.
        PICTURE,
        /// The cautions; icons and foot at their right.
        CAUTIONS,
        /// Icons and cautions; the foot at their right.
        WORDS
    }

    /// @param shown whether there is a picture
    /// @param columns of icons at most
    private CardViews.Set set(boolean shown, Split split, int columns) {
        characters.checked(subject, "name", Face.NAMES_STRONG, Face.NAMES_STRONG_ITALIC);
        // one that is missing or broken is told even where the picture makes room
        card.photo().ifPresent(photo -> photos.aspect(photo.file(), subject));
        double inner = plan.innerWidth() / POINT_MM;
        TextBlock name =
                typesetter.set(Typesetter.words(card.title().botanical(), true), inner, plan.name(), subject, "name");
        TextBlock common = card.title().commonNames().stream()
                .findFirst()
                .map(text -> block(text, "common name", Face.FACTS, inner, plan.common()))
                .orElseGet(TextBlock::none);
        TextBlock why = card.whyNow()
                .map(text -> block(text, "selling note", Face.NAMES_ITALIC, inner, plan.why()))
                .orElseGet(TextBlock::none);
        double s = plan.isSmall() ? 1 : plan.scale();
        List<CardView.CardLogo> head = head();
        double nameTop = plan.margin() + (head.isEmpty() ? 0 : plan.logo() + plan.furniture(3.4, 2.4));
        double commonTop = nameTop + name.height() + 1.8 * s;
        double ruleTop = commonTop + common.height() + (common.isEmpty() ? 2.4 : 3.4) * s;
        double whyTop = ruleTop + 3.2 * s;
        double middleTop = whyTop + why.height() + (why.isEmpty() ? 1 : 4) * s;

        double footTop = plan.height() - plan.margin() - plan.shopLine() - plan.foot();
        double footLeft = split == Split.NONE ? plan.margin() : right(shown);
        double footWidth = plan.width() - plan.margin() - footLeft;
        CardBox words = split != Split.NONE
                ? wordsBeside(middleTop, footTop, shown)
                : new CardBox(plan.margin(), middleTop, plan.innerWidth(), footTop - gap() - middleTop);
        boolean parted = split == Split.CAUTIONS;
        List<CardView.CardCaution> cautions = cautions(words, parted);
        double bottom = parted
                ? footTop - gap() * 0.7
                : cautions.isEmpty() ? words.bottom() : cautions.getFirst().top() - gap();
        double middle = plan.wide() && shown ? words.bottom() - middleTop : bottom - middleTop;
        if (middle < plan.leastMiddle(shown) && !(plan.wide() && shown)) {
            throw tooMuch();
        }
        Middle set = middle(
                parted ? new CardBox(footLeft, middleTop, footWidth, bottom - middleTop) : words,
                parted,
                shown,
                middleTop,
                bottom,
                columns);
        List<CardView.CardPicture> picture = set.picture();
        CardIcons.Set icons = set.icons();
        boolean wordsOnly = !shown && !CardIcons.any(card);
        // a card that knows only its name carries it in the middle instead of leaving a hole
        double lower = wordsOnly ? round(Math.max(0, footTop - middleTop) * 0.42) : 0;
        if (!cautions.isEmpty()) {
            figures.put("figure:caution", Icons.caution(this.words.text("sheet.cautions")));
        }
        double priceType = priceType(footWidth);
        CodeImage code = CodeImage.of(card.link(), card.trade(), CodeImage.Damage.SOME);
        CodeDrawing drawn = new CodeDrawing(
                code,
                code.dotsThatFit(plan.code()).orElseThrow(() -> LabelViews.codeTooSmall(code, plan.code(), subject)));
        figures.put("figure:code", drawn, this.words.text("code.alternative", Map.of("link", code.address())));
        CardView view = new CardView(
                this.words.text("card.title", Map.of("name", subject)),
                page(icons.leading()),
                name,
                common,
                why,
                round(nameTop + lower),
                round(commonTop + lower),
                round(ruleTop + lower),
                round(whyTop + lower),
                picture,
                icons.icons(),
                icons.type(),
                cautions,
                foot(footLeft, footTop, footWidth, priceType),
                card.price()
                        .map(this.words::money)
                        .map(text -> characters.checked(text, "price", Face.FACTS_STRONG))
                        .orElse(""),
                card.stockSize()
                        .map(size -> block(
                                this.words.size(size, card.form()),
                                "size",
                                Face.FACTS_STRONG,
                                (footWidth - plan.code() - 4) / POINT_MM,
                                sizeType()))
                        .orElseGet(TextBlock::none),
                each(footWidth, priceType),
                round(drawn.width() * POINT_MM),
                this.words.text("sheet.call"),
                shop(),
                card.link().plant().toString(),
                head);
        return new CardViews.Set(view, figures.drawings(), figures.alternatives());
    }

    /// The picture and the icons beside it.
    private record Middle(List<CardView.CardPicture> picture, CardIcons.Set icons) {}

    /// Where words beside the picture of an upright card find no room, the picture is narrower before it goes.
    private Middle middle(CardBox box, boolean parted, boolean shown, double top, double bottom, int columns) {
        PrintRefused refusal = tooMuch();
        for (double narrower : shown && !plan.wide() ? NARROWER : List.of(1.0)) {
            List<CardView.CardPicture> picture = shown ? picture(top, bottom, narrower) : List.of();
            if (!CardIcons.any(card)) {
                return new Middle(picture, CardIcons.Set.NONE);
            }
            try {
                CardBox beside = parted ? box : iconBox(box, top, bottom, picture);
                CardIcons icons = new CardIcons(plan, words, typesetter);
                return new Middle(picture, icons.set(card, beside, columns, figures, subject));
            } catch (PrintRefused refused) {
                refusal = CardViews.curable(refused);
            }
        }
        throw refusal;
    }

    private List<CardView.CardLogo> head() {
        if (!logo || card.shop().logo().isEmpty()) {
            return List.of();
        }
        Logo shown = card.shop().logo().get();
        double width = shown.widthIn(plan.innerWidth() * 0.45, plan.logo());
        figures.put(
                "figure:logo", photos.logo(shown, width / POINT_MM), card.shop().name());
        double top = plan.margin() + (plan.logo() - width / shown.aspect()) / 2;
        return List.of(new CardView.CardLogo(plan.margin(), round(top), round(width)));
    }

    private List<Word> shop() {
        List<Word> shop = new ArrayList<>(
                Typesetter.words(characters.checked(card.shop().name(), "shop", Face.FACTS_STRONG), Face.FACTS_STRONG));
        String address = characters.checked(card.shop().addressLine(), "shop", Face.FACTS);
        if (!address.isEmpty()) {
            for (Word word : Typesetter.words(address, Face.FACTS)) {
                shop.add(new Word(word.text(), word.face(), true, !word.spaced()));
            }
        }
        return shop;
    }

    private PrintRefused tooMuch() {
        return new PrintRefused(Problem.of("print.page-overflow", subject).with("name", subject));
    }

    private double gap() {
        return plan.isSmall() ? 3 : 4 * plan.scale();
    }

    /// Where the right part of a lying card begins.
    private double right(boolean shown) {
        return plan.margin() + plan.innerWidth() * (shown ? 0.4 : 0.42) + gap();
    }

    /// Where icons and cautions of a lying card stand, cautions lowest: beside the picture, or beside the foot.
    private CardBox wordsBeside(double top, double footTop, boolean shown) {
        double right = right(shown);
        return shown
                ? new CardBox(right, top, plan.width() - plan.margin() - right, footTop - gap() * 0.7 - top)
                : new CardBox(plan.margin(), top, right - gap() * 1.5 - plan.margin(), bottomOfAll() - top);
    }

    private double bottomOfAll() {
        return plan.height() - plan.margin() - plan.shopLine() - (plan.isSmall() ? 1 : 2 * plan.scale());
    }

    private CardBox iconBox(CardBox words, double top, double bottom, List<CardView.CardPicture> picture) {
        if (plan.wide() || picture.isEmpty()) {
            return new CardBox(words.left(), top, words.width(), bottom - top);
        }
        CardView.CardPicture beside = picture.getFirst();
        double left = beside.left() + beside.width() + (card.photo().isPresent() ? 6 : 5) * Math.max(1, plan.scale());
        return new CardBox(left, top, plan.width() - plan.margin() - left, bottom - top);
    }

    /// @param narrower share of the usual width that it takes of an upright card, 0 to 1
    private List<CardView.CardPicture> picture(double top, double bottom, double narrower) {
        double height = (plan.wide() ? bottomOfAll() : bottom) - top;
        double width = plan.wide() ? right(true) - gap() - plan.margin() : plan.innerWidth();
        if (height < plan.leastMiddle(true) && plan.wide()) {
            throw tooMuch();
        }
        boolean alone = plan.wide() || !CardIcons.any(card);
        double share = alone ? 1 : narrower * (card.photo().isPresent() ? 0.5 : 0.56);
        if (card.photo().isPresent()) {
            return List.of(photo(card.photo().get(), width * share, top, height));
        }
        double ring =
                plan.wide() ? Math.min(height, width) : Math.min(Math.min(height, plan.mostRing()), width * share);
        figures.put("figure:ring", YearRing.draw(card.year(), subject, words));
        double left = plan.wide() ? plan.margin() + (width - ring) / 2 : plan.margin() - 2 * Math.max(1, plan.scale());
        return List.of(new CardView.CardPicture(
                "figure:ring", round(top + (height - ring) / 2), round(left), round(ring), "", 0, 0));
    }

    /// A photograph takes the place of the ring: as large as the room allows, cut no more than it must be.
    private CardView.CardPicture photo(Photo photo, double most, double top, double all) {
        String credit = characters.checked(words.credit(photo.credit(), photo.license()), "photo credit", Face.FACTS);
        double type = 5.8 * Math.max(1, plan.scale() * 0.8);
        double room = all - (credit.isEmpty() ? 0 : type * 0.6);
        double aspect = Math.clamp(photos.aspect(photo.file(), subject), 0.7, 1.35);
        double width = Math.min(most, room * aspect);
        double height = Math.min(room, width / aspect);
        // a lying photograph in a tall middle may be cut at its sides to stand a little taller
        height = Math.min(room, Math.max(height, width * 0.92));
        figures.put(
                "figure:photo",
                photos.fill(photo.file(), subject, width / POINT_MM, height / POINT_MM),
                words.text("photo.alt", Map.of("name", subject)));
        double at = plan.wide() ? top : top + (room - height) / 2;
        return new CardView.CardPicture(
                "figure:photo", round(at), plan.margin(), round(width), credit, round(at + height + 0.8), type);
    }

    private CardView.Page page(double iconLeading) {
        return new CardView.Page(
                plan.width(),
                plan.height(),
                plan.margin(),
                round(plan.innerWidth()),
                round(plan.icon()),
                round(plan.iconIndent()),
                round(iconLeading),
                round(plan.furniture(4.6, 3.9)),
                round(plan.height() - plan.furniture(11.8, 9.8)),
                round(plan.furniture(8, 6.8)));
    }

    private CardView.Foot foot(double left, double top, double width, double priceType) {
        return new CardView.Foot(
                round(left),
                round(top),
                round(width),
                round(top + plan.furniture(4.3, 2.2)),
                round(top + plan.furniture(4.1, 2.2)),
                round(top + plan.furniture(6.5, 4.2)),
                plan.margin(),
                round(plan.margin() - plan.furniture(2.8, 2.1)),
                priceType,
                round(plan.furniture(13, 11)),
                round(plan.furniture(10.5, 8.5)));
    }

    /// The largest type in which the price stands beside the code.
    private double priceType(double footWidth) {
        if (card.price().isEmpty()) {
            return plan.price();
        }
        String price = words.money(card.price().get());
        double room = (footWidth - plan.code() - 2) / POINT_MM;
        double fits = Math.floor(room / shelf.width(Face.FACTS_STRONG, price, 1) * 2) / 2;
        if (fits < plan.leastPrice()) {
            throw new PrintRefused(Problem.of("print.overflow", price)
                    .with("name", subject)
                    .with("field", "price")
                    .with("least", Long.toString(Math.round(plan.leastPrice()))));
        }
        return Math.min(fits, plan.price());
    }

    /// The word `each`, where the price leaves room for it.
    private String each(double footWidth, double type) {
        String each = words.text("card.each");
        double room = (footWidth - plan.code() - 2) / POINT_MM;
        double price = card.price()
                .map(money -> shelf.width(Face.FACTS_STRONG, words.money(money), type))
                .orElse(room);
        return price + shelf.width(Face.FACTS, " " + each, plan.furniture(13, 11)) <= room ? each : "";
    }

    private TypeRange sizeType() {
        double s = Math.max(1, plan.scale());
        return card.price().isPresent()
                ? new TypeRange(15 * s, 12 * s, 9 * s, 2, 1.15)
                : new TypeRange(30 * s, 16 * s, 11 * s, 2, 1.12);
    }

    private TextBlock block(String text, String field, Face face, double width, TypeRange range) {
        String clean = characters.checked(text, field, face);
        return clean.isEmpty()
                ? TextBlock.none()
                : typesetter.set(Typesetter.words(clean, face), width, range, subject, field);
    }

    /// Notices that the law asks for and cautions, the last one lowest.
    ///
    /// @param high whether the first stands at the top of the box, not the last at its bottom
    private List<CardView.CardCaution> cautions(CardBox box, boolean high) {
        double measure = (box.width() - plan.cautionIndent() - 0.9) / POINT_MM;
        double after = plan.furniture(1.4, 1.2);
        List<TextBlock> blocks = Stream.concat(
                        card.notices().stream()
                                .map(notice -> block(notice, "notice", Face.FACTS_STRONG, measure, plan.caution())),
                        card.cautions().stream()
                                .map(this::caution)
                                .distinct() // two of a kind say the same once they are brief
                                .map(caution -> block(caution, "caution", Face.FACTS, measure, plan.caution())))
                .toList();
        double top = box.bottom()
                - blocks.stream().mapToDouble(block -> block.height() + after).sum();
        if (top < box.top()) {
            throw tooMuch();
        }
        top = high ? box.top() : top;
        List<CardView.CardCaution> placed = new ArrayList<>();
        for (TextBlock block : blocks) {
            placed.add(new CardView.CardCaution(
                    round(box.left()), round(box.left() + plan.cautionIndent()), round(top), block));
            top += block.height() + after;
        }
        return placed;
    }

    private String caution(Caution caution) {
        return words.caution(plan.briefCautions() ? new Caution(caution.hazard(), caution.whom(), "") : caution);
    }

    private static double round(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }
}
