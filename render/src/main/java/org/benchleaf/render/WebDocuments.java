package org.benchleaf.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.SizeStand;
import org.benchleaf.render.figure.SvgWriter;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.AvailabilityList;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.Comparison;
import org.benchleaf.render.page.ListPack;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.page.Shop;
import org.benchleaf.render.pdf.FontShelf;
import org.benchleaf.render.pdf.PhotoShelf;
import org.benchleaf.render.view.AvailabilityViews;
import org.benchleaf.render.view.BulletinViews;
import org.benchleaf.render.view.ComparisonViews;
import org.benchleaf.render.view.DocumentView;
import org.benchleaf.render.view.Figures;
import org.benchleaf.render.view.PackViews;
import org.benchleaf.render.view.PageFrame;
import org.benchleaf.render.view.SheetView;
import org.benchleaf.render.view.WebFigures;
import org.benchleaf.render.view.WebSheets;

/// Printed documents as pages of the web: the same page models, set by the same views on a page that never ends, so
/// that both say the same. Each is one HTML5 file without script that opens from a mail or a disk.
///
/// It may be shared between threads.
public final class WebDocuments {
    private static final double PHOTO_WIDTH = 480;
    private static final double PHOTO_HEIGHT = 360;
    private static final double STAND_WIDTH = 280;
    private static final double STAND_HEIGHT = 176;

    private final ContentPack content;
    private final Photographs photographs;
    private final SheetTemplates templates;
    private final ShelfPool shelves;

    private WebDocuments(ContentPack content, Photographs photographs) {
        this.content = content;
        this.photographs = photographs;
        this.templates = new SheetTemplates(content);
        this.shelves = new ShelfPool(content);
    }

    /// @param photographs those that its pages may show
    public static WebDocuments using(ContentPack content, Photographs photographs) {
        return new WebDocuments(content, photographs);
    }

    /// @param watch may let plants pass that cannot be shown
    /// @throws PrintRefused when a plant cannot be shown as it stands
    public String availability(AvailabilityList list, PrintStyle style, PrintWatch watch) {
        return page(
                style,
                list.shop(),
                List.of(),
                set -> AvailabilityViews.pages(
                        list, PageFrame.endless(), set.words(), set.shelf(), set.photos(), set.figures(), watch));
    }

    /// @throws PrintRefused when a plant cannot be shown as it stands
    public String bulletin(Bulletin bulletin, PrintStyle style) {
        return page(
                style,
                bulletin.shop(),
                List.of(),
                set -> new BulletinViews(PageFrame.endless(), set.words(), set.shelf(), set.photos(), set.figures())
                        .pages(bulletin));
    }

    /// @throws PrintRefused when a plant cannot be shown as it stands
    public String comparison(Comparison comparison, PrintStyle style) {
        return page(
                style,
                comparison.shop(),
                List.of(),
                set -> new ComparisonViews(PageFrame.endless(), set.words(), set.shelf(), set.photos(), set.figures())
                        .pages(comparison));
    }

    /// @throws PrintRefused when a plant cannot be shown as it stands
    public String listPack(ListPack pack, PrintStyle style) {
        return page(
                style,
                pack.shop(),
                pack.sheets(),
                set -> new PackViews(PageFrame.endless(), set.words(), set.shelf(), set.photos(), set.figures())
                        .pages(pack));
    }

    /// What views need.
    private record Set(Wording words, FontShelf shelf, PhotoShelf photos, Figures figures) {}

    private interface Views {
        List<DocumentView> of(Set set);
    }

    private String page(PrintStyle style, Shop shop, List<PlantSheet> sheets, Views views) {
        Wording words = Wording.open(content, style.language(), style.lengths(), style.containers());
        FontShelf shelf = shelves.borrow();
        try {
            Figures figures = new Figures();
            PhotoShelf photos = new PhotoShelf(photographs);
            List<DocumentView> pages = views.of(new Set(words, shelf, photos, figures));
            DocumentView first = pages.getFirst();
            List<DocumentView.Section> sections = new ArrayList<>();
            pages.forEach(page -> sections.addAll(page.sections()));
            List<Sheet> twins = new ArrayList<>();
            sheets.forEach(sheet -> twins.add(sheet(sheet, "sheet" + twins.size(), photos, words)));
            Map<String, Object> model = new HashMap<>();
            model.put("page", first.with(sections));
            model.put("figures", new WebFigures(figures));
            model.put("logo", shop.logo().isPresent() ? "logo" : "");
            model.put("sheets", twins);
            model.put("style", content.text("styles/web.css") + content.text("styles/document-web.css"));
            model.put("words", new TemplateWords(words));
            model.put("language", words.language().getLanguage());
            return templates.fill("plant-parts", "document-page", model);
        } finally {
            shelves.giveBack(shelf);
        }
    }

    /// A product sheet in the pack.
    ///
    /// @param site what comes before paths, for the file may lie anywhere
    public record Sheet(SheetView view, String site, String photo, String ring, String stand) {}

    private static Sheet sheet(PlantSheet sheet, String id, PhotoShelf photos, Wording words) {
        String name = sheet.title().botanical().toString();
        String link = sheet.link().toString();
        return new Sheet(
                WebSheets.view(sheet, words),
                link.substring(0, link.length() - sheet.link().path().length()),
                sheet.photo()
                        .map(photo -> photos.fill(photo.file(), name, PHOTO_WIDTH, PHOTO_HEIGHT)
                                .markup(id + "-photo", words.text("photo.alt", Map.of("name", name))))
                        .orElse(""),
                sheet.year().isUnknown() ? "" : SvgWriter.write(YearRing.draw(sheet.year(), name, words), id + "-ring"),
                sheet.size().height().isEmpty()
                        ? ""
                        : SvgWriter.write(
                                SizeStand.draw(sheet.size(), name, STAND_WIDTH, STAND_HEIGHT, words), id + "-stand"));
    }
}
