package org.benchleaf.render;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.SizeStand;
import org.benchleaf.render.figure.SvgWriter;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.NeedPage;
import org.benchleaf.render.page.PageLinks;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.picture.Picture;
import org.benchleaf.render.view.NeedViews;
import org.benchleaf.render.view.SheetView;
import org.benchleaf.render.view.WebSheets;

/// The front door of the web: the live page of a plant as one standalone HTML5 document, without script.
///
/// Same input, same text, so that a strong ETag can be taken from it. It may be shared between threads.
public final class WebPages {
    private static final double STAND_WIDTH = 280;
    private static final double STAND_HEIGHT = 176;

    /// Where pages look for their photograph, before its file name.
    public static final String PHOTO_PATH = "/photo/";

    private final ContentPack content;
    private final SheetTemplates templates;
    private final WebPictures pictures;
    private final Map<PrintStyle, Wording> wordings = new ConcurrentHashMap<>();

    private WebPages(ContentPack content, Photographs photographs) {
        this.content = content;
        this.pictures = new WebPictures(photographs);
        this.templates = new SheetTemplates(content);
    }

    /// @param photographs those that its pages may show
    public static WebPages using(ContentPack content, Photographs photographs) {
        return new WebPages(content, photographs);
    }

    /// The page that a printed code leads to.
    ///
    /// @return a whole document, UTF-8, styles inside
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public String plantPage(PlantSheet sheet, PrintStyle style) {
        return plantPage(sheet, PageLinks.NONE, style);
    }

    /// The same, with what takes the plant's place while it is gone, and its partners for fruit.
    public String plantPage(PlantSheet sheet, PageLinks links, PrintStyle style) {
        Wording words = words(style);
        SheetView view = WebSheets.view(sheet, words);
        List<Picture> photo = sheet.photo().flatMap(shown -> pictures.find(shown.file())).stream()
                .toList();
        String name = sheet.title().botanical().toString();
        return templates.fill(
                "plant-page",
                Map.ofEntries(
                        Map.entry("sheet", view),
                        Map.entry("photo", photo),
                        Map.entry("instead", WebSheets.links(links.instead())),
                        Map.entry("fruit", links.fruit()),
                        Map.entry("partners", WebSheets.links(links.partners())),
                        Map.entry(
                                "photoPath",
                                sheet.photo()
                                        .map(shown -> PHOTO_PATH + encoded(shown.file()))
                                        .orElse("")),
                        Map.entry("photoAlt", words.text("photo.alt", Map.of("name", name))),
                        Map.entry(
                                "title",
                                words.text(
                                        "web.title",
                                        Map.of(
                                                "name",
                                                name,
                                                "shop",
                                                sheet.shop().name()))),
                        Map.entry("ring", yearRing(sheet, words)),
                        Map.entry("stand", sizeStand(sheet, words)),
                        Map.entry("style", content.text("styles/web.css")),
                        Map.entry("words", new TemplateWords(words)),
                        Map.entry("language", words.language().getLanguage())));
    }

    /// The page that answers a need, or asks for one.
    ///
    /// @return a whole document, UTF-8, styles inside
    public String needPage(NeedPage page, PrintStyle style) {
        Wording words = words(style);
        return templates.fill(
                "need-page",
                Map.of(
                        "page",
                        page,
                        "view",
                        new NeedViews(words).view(page),
                        "title",
                        words.text("web.find.title", Map.of("shop", page.shop().name())),
                        "style",
                        content.text("styles/web.css") + content.text("styles/need.css"),
                        "words",
                        new TemplateWords(words),
                        "language",
                        words.language().getLanguage()));
    }

    private Wording words(PrintStyle style) {
        return wordings.computeIfAbsent(
                style, asked -> Wording.open(content, asked.language(), asked.lengths(), asked.containers()));
    }

    /// A photograph that pages show, upright, small enough for a telephone and freed of what the camera noted, such as
    /// the place.
    ///
    /// @param file its name in the shop's folder
    /// @return a JPEG, or empty when there is no such photograph or it cannot be read
    public Optional<byte[]> photograph(String file) {
        return pictures.find(file).map(Picture::jpeg);
    }

    private static String encoded(String file) {
        return URLEncoder.encode(file, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private static String yearRing(PlantSheet sheet, Wording words) {
        return sheet.year().isUnknown()
                ? ""
                : SvgWriter.write(
                        YearRing.draw(sheet.year(), sheet.title().botanical().toString(), words), "ring");
    }

    private static String sizeStand(PlantSheet sheet, Wording words) {
        return sheet.size().height().isEmpty()
                ? ""
                : SvgWriter.write(
                        SizeStand.draw(
                                sheet.size(), sheet.title().botanical().toString(), STAND_WIDTH, STAND_HEIGHT, words),
                        "stand");
    }
}
