package org.benchleaf.render;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.SvgWriter;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.figure.YearWords;
import org.benchleaf.render.page.Bulletin;
import org.benchleaf.render.page.BulletinDesk;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.SeenLine;
import org.benchleaf.render.page.SightingsPage;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.NameHtml;

/// The crop walk's pages and the bulletin's as HTML. It may be shared between threads.
public final class WalkPages {
    private final ContentPack content;
    private final SheetTemplates templates;

    private WalkPages(ContentPack content) {
        this.content = content;
        this.templates = new SheetTemplates(content);
    }

    public static WalkPages using(ContentPack content) {
        return new WalkPages(content);
    }

    /// The page that a telephone keeps and its scripts fill; nothing in it is known to staff alone.
    public String shell(String shop, Wording words) {
        return templates.fill("walk", model(words, Map.of("shop", shop)));
    }

    /// What was seen, and what somebody must look at.
    public String sightings(SightingsPage page, Wording words) {
        return templates.fill(
                "sightings",
                model(
                        words,
                        Map.of(
                                "page",
                                page,
                                "conflicts",
                                page.conflicts().stream().map(WalkPages::line).toList(),
                                "seen",
                                page.seen().stream().map(WalkPages::line).toList())));
    }

    /// The page on which a bulletin is made.
    public String desk(BulletinDesk page, Wording words) {
        List<Map<String, Object>> choices = page.choices().stream()
                .map(choice -> Map.<String, Object>of(
                        "seen",
                        line(choice.seen()),
                        "place",
                        choice.place() == 0 ? "" : Integer.toString(choice.place()),
                        "chosen",
                        choice.place() > 0,
                        "reason",
                        choice.reason()))
                .toList();
        return templates.fill("bulletin-desk", model(words, Map.of("page", page, "choices", choices)));
    }

    /// The bulletin that everybody sees.
    ///
    /// @param greeting its first line; may be empty
    /// @param print path to the same on paper; empty when there is none
    public String bulletin(Bulletin page, String greeting, String print, Wording words) {
        List<Map<String, Object>> picks = Stream.concat(page.lead().stream(), page.others().stream())
                .map(pick -> pick(pick, words))
                .toList();
        return templates.fill(
                "bulletin-page",
                model(
                        words,
                        Map.of(
                                "page",
                                page,
                                "picks",
                                picks,
                                "greeting",
                                greeting,
                                "print",
                                print,
                                "prices",
                                words.telling().prices(),
                                "days",
                                words.text(
                                        "bulletin.web.days",
                                        Map.of("from", words.date(page.from()), "to", words.date(page.to()))))));
    }

    private Map<String, Object> model(Wording words, Map<String, Object> own) {
        Map<String, Object> model = new HashMap<>(own);
        model.put("style", content.text("styles/web.css") + content.text("styles/bulletin.css"));
        model.put("words", new TemplateWords(words));
        model.put("language", words.language().getLanguage());
        return model;
    }

    private static Map<String, Object> line(SeenLine line) {
        return Map.of(
                "line",
                line,
                "name",
                line.name().map(NameHtml::of).orElse(line.plant()),
                "photo",
                line.photo().orElse(""));
    }

    private static Map<String, Object> pick(Bulletin.Pick pick, Wording words) {
        BotanicalName name = pick.title().botanical();
        Map<String, Object> view = new HashMap<>();
        view.put("name", NameHtml.of(name));
        view.put("common", pick.title().commonNames().stream().findFirst().orElse(""));
        view.put("reason", pick.reason());
        view.put("path", pick.link().path());
        view.put(
                "photo",
                pick.photo().map(photo -> WebPages.PHOTO_PATH + photo.file()).orElse(""));
        view.put("alt", words.text("photo.alt", Map.of("name", name.toString())));
        view.put(
                "credit",
                pick.photo()
                        .map(photo -> words.credit(photo.credit(), photo.license()))
                        .orElse(""));
        view.put(
                "ring",
                pick.photo().isPresent() || pick.year().isUnknown()
                        ? ""
                        : SvgWriter.write(
                                YearRing.draw(pick.year(), name.toString(), words),
                                "ring-" + pick.link().plant()));
        view.put("year", YearWords.lines(pick.year(), words));
        view.put(
                "cautions",
                pick.cautions().stream()
                        .map(caution -> words.caution(caution.caution()))
                        .toList());
        view.put("items", pick.items().stream().map(item -> item(item, words)).toList());
        return view;
    }

    private static Map<String, Object> item(ItemLine item, Wording words) {
        Optional<String> seen = item.seen().isEmpty() ? Optional.empty() : Optional.of(words.terms(item.seen()));
        return Map.of(
                "size",
                words.size(item.size(), item.form()),
                "stock",
                words.availability(item.availability()),
                "price",
                item.price().flatMap(words.telling()::price).map(words::money).orElse(""),
                "seen",
                seen.orElse(""));
    }
}
