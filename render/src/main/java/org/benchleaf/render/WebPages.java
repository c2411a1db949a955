package org.benchleaf.render;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.SizeStand;
import org.benchleaf.render.figure.SvgWriter;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.render.view.SheetView;
import org.benchleaf.render.view.WebSheets;

/// The front door of the web: the live page of a plant as one standalone HTML5 document, without script.
///
/// Same input, same text, so that a strong ETag can be taken from it. It may be shared between threads.
public final class WebPages {
    private static final double STAND_WIDTH = 330;
    private static final double STAND_HEIGHT = 200;

    private final ContentPack content;
    private final SheetTemplates templates;
    private final Map<PrintStyle, Wording> wordings = new ConcurrentHashMap<>();

    private WebPages(ContentPack content) {
        this.content = content;
        this.templates = new SheetTemplates(content);
    }

    public static WebPages using(ContentPack content) {
        return new WebPages(content);
    }

    /// The page that a printed code leads to.
    ///
    /// @return a whole document, UTF-8, styles inside
    /// @throws org.benchleaf.content.MissingContent when the pack lacks a file or a word
    public String plantPage(PlantSheet sheet, PrintStyle style) {
        Wording words =
                wordings.computeIfAbsent(
                        style,
                        asked -> Wording.open(content, asked.language(), asked.lengths(), asked.containers()));
        SheetView view = WebSheets.view(sheet, words);
        return templates.fill(
                "plant-page",
                Map.of(
                        "sheet", view,
                        "title",
                                words.text(
                                        "web.title",
                                        Map.of(
                                                "name",
                                                        sheet.title()
                                                                .botanical()
                                                                .toString(),
                                                "shop", sheet.shop().name())),
                        "ring", yearRing(sheet, words),
                        "stand", sizeStand(sheet, words),
                        "style", content.text("styles/web.css"),
                        "words", new TemplateWords(words),
                        "language", words.language().getLanguage()));
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
