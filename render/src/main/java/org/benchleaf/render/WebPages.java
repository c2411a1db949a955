package org.benchleaf.render;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.SizeStand;
import org.benchleaf.render.figure.SvgWriter;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.AvailabilityPage;
import org.benchleaf.render.page.ComparePage;
import org.benchleaf.render.page.NeedPage;
import org.benchleaf.render.page.PageLinks;
import org.benchleaf.render.page.PageMeta;
import org.benchleaf.render.page.Photo;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.page.Shop;
import org.benchleaf.render.picture.Picture;
import org.benchleaf.render.view.AvailablePageViews;
import org.benchleaf.render.view.CompareViews;
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
        return plantPage(sheet, PageLinks.NONE, PageMeta.NONE, style);
    }

    /// The same, with what takes the plant's place while it is gone, its partners for fruit, and what programs read.
    public String plantPage(PlantSheet sheet, PageLinks links, PageMeta meta, PrintStyle style) {
        Wording words = words(style);
        SheetView view = WebSheets.view(sheet, words);
        List<Picture> photo = sheet.photo().flatMap(shown -> pictures.find(shown.file())).stream()
                .toList();
        String name = sheet.title().botanical().toString();
        Map<String, Object> model = new HashMap<>(frame("web.css", sheet.shop(), words));
        model.put("sheet", view);
        model.put("photo", photo);
        model.put("instead", WebSheets.links(links.instead()));
        model.put("insteadOf", links.insteadOf());
        model.put("fruit", links.fruit());
        model.put("partners", WebSheets.links(links.partners()));
        model.put("photoPath", sheet.photo().map(WebPages::photoPath).orElse(""));
        model.put("photoAlt", words.text("photo.alt", Map.of("name", name)));
        model.put(
                "title",
                words.text(
                        "web.title", Map.of("name", name, "shop", sheet.shop().name())));
        model.put("meta", meta);
        model.put("data", embedded(meta.data()));
        model.put("ring", yearRing(sheet, words));
        model.put("stand", sizeStand(sheet, words));
        return templates.fill("plant-parts", "plant-page", model);
    }

    /// JSON that no HTML reader can mistake for the end of its element: in JSON these stand in texts alone.
    private static String embedded(String json) {
        return json.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026");
    }

    /// The path of a photograph.
    public static String photoPath(Photo photo) {
        return PHOTO_PATH + encoded(photo.file());
    }

    /// The front page: how to find a plant, and what is here now.
    public String frontPage(AvailabilityPage page, PrintStyle style) {
        return available("front-page", page, style);
    }

    /// What can be had, by name.
    public String availabilityPage(AvailabilityPage page, PrintStyle style) {
        return available("available-page", page, style);
    }

    private String available(String template, AvailabilityPage page, PrintStyle style) {
        Wording words = words(style);
        Map<String, Object> model = new HashMap<>(frame("list.css", page.shop(), words));
        model.put("page", page);
        model.put("view", new AvailablePageViews(words).view(page));
        return templates.fill(template, model);
    }

    /// Up to four plants side by side.
    public String comparePage(ComparePage page, PrintStyle style) {
        Wording words = words(style);
        Map<String, Object> model = new HashMap<>(frame("list.css", page.shop(), words));
        model.put("page", page);
        model.put("view", new CompareViews(words).view(page));
        return templates.fill("compare-page", model);
    }

    /// A page that says one thing, such as that something is not here.
    public String messagePage(String text, Shop shop, PrintStyle style) {
        Map<String, Object> model = new HashMap<>(frame("list.css", shop, words(style)));
        model.put("text", text);
        return templates.fill("message-page", model);
    }

    /// What every page has.
    private Map<String, Object> frame(String more, Shop shop, Wording words) {
        String style = content.text("styles/web.css");
        return Map.of(
                "shop",
                shop,
                "style",
                more.equals("web.css")
                        ? style
                        : style + content.text("styles/need.css") + content.text("styles/" + more),
                "words",
                new TemplateWords(words),
                "language",
                words.language().getLanguage());
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
                style,
                asked -> Wording.open(content, asked.language(), asked.lengths(), asked.containers())
                        .telling(asked.telling()));
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
