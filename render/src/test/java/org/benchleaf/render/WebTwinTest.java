package org.benchleaf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.page.Comparison;
import org.junit.jupiter.api.Test;

/// What a printed document says, its twin for the web says too, and the other way round: the words of the PDF as an
/// outside reader extracts them, held against the words of the HTML.
class WebTwinTest {
    private static final PrintStyle STYLE = PrintStyle.ENGLISH;
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}.,$’'-]*");
    /// Words of figures are drawn on paper and lie in the figure on the web.
    private static final Pattern FIGURE = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);

    private final Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);
    private final WebDocuments web = WebDocuments.using(ContentPack.builtIn(), Photographs.NONE);

    private static String text(String html) {
        return FIGURE.matcher(html.substring(html.indexOf("<main")))
                .replaceAll(" ")
                // on paper relatives stand under another heading
                .replaceAll("<h2 id=\"relatives[^<]*</h2>", " ")
                // a code on paper is a link on the web
                .replaceAll("<a href=\"https[^>]*>https[^<]*</a>", " ")
                .replaceAll("<br>|</?(?:sup|p|td|th|li|h\\d|dt|dd|div|span)[^>]*>", " ")
                .replaceAll("<[^>]*>", "")
                .replace("&amp;", "&")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace('\u00A0', ' ');
    }

    private static Set<String> words(String text) {
        Set<String> words = new LinkedHashSet<>();
        Matcher word = WORD.matcher(text.replace('\u00A0', ' '));
        while (word.find()) {
            words.add(word.group().toLowerCase(Locale.ROOT).replaceAll("[.,]+$", ""));
        }
        return words;
    }

    private interface Extract {
        String text(int page) throws IOException;
    }

    private static Set<String> words(Printed printed, Extract extract) throws IOException {
        List<String> pages = new ArrayList<>();
        for (int page = 0; page < printed.pages(); page++) {
            pages.add(extract.text(page));
        }
        return words(String.join(" ", pages));
    }

    /// Every word on paper stands on the web, but for what only pages need.
    private static void assertSame(Printed printed, String html, String... onlyOnPages) throws IOException {
        // read across, words beside a ring are mixed with the letters in it; as painted, some run into each other
        Set<String> across = words(printed, printed::text);
        Set<String> painted = words(printed, printed::painted);
        Set<String> page = words(text(html));
        Set<String> figures = words(html);
        Set<String> missing = new LinkedHashSet<>(across);
        missing.retainAll(painted);
        missing.removeAll(page);
        missing.removeAll(figures);
        List.of(onlyOnPages).forEach(missing::remove);
        assertThat(missing).as("on paper and not on the web").isEmpty();
        Set<String> more = new LinkedHashSet<>(page);
        more.removeAll(across);
        more.removeAll(painted);
        assertThat(more).as("on the web and not on paper").isEmpty();
    }

    @Test
    void anAvailabilityListSaysTheSame() throws IOException {
        var list = DocumentSamples.availability(12);
        try (Printed printed = Printed.of(out -> printer.availability(list, SheetFormat.LETTER, STYLE, out))) {
            assertSame(printed, web.availability(list, STYLE, PrintWatch.STRICT), "page", "of", "continued");
        }
    }

    @Test
    void aComparisonSaysTheSame() throws IOException {
        var three = new Comparison(SampleSheets.sheets().subList(0, 3), Samples.SHOP);
        try (Printed printed = Printed.of(out -> printer.comparison(three, SheetFormat.LETTER, STYLE, out))) {
            assertSame(printed, web.comparison(three, STYLE), "page", "continued");
        }
    }

    @Test
    void aBulletinSaysTheSame() throws IOException {
        var bulletin = DocumentSamples.bulletin();
        try (Printed printed = Printed.of(out -> printer.bulletin(bulletin, SheetFormat.LETTER, STYLE, out))) {
            assertSame(printed, web.bulletin(bulletin, STYLE), "page", "continued");
        }
    }

    @Test
    void aPlantListSaysTheSame() throws IOException {
        var pack = DocumentSamples.pack();
        try (Printed printed = Printed.of(out -> printer.listPack(pack, SheetFormat.LETTER, STYLE, out))) {
            // two headings that a sheet needs and a plant's page on the web does without: where marks and uses stand
            assertSame(printed, web.listPack(pack, STYLE), "page", "continued", "landscape", "seen", "last", "walk");
        }
    }

    @Test
    void aPageIsOneFileThatAsksForNothing() {
        String html = web.bulletin(DocumentSamples.bulletin(), STYLE);
        assertThat(html).startsWith("<!DOCTYPE html>").doesNotContain("<script", "<link", "src=\"/", "url(");
    }

    @Test
    void noIdStandsTwice() {
        Matcher id = Pattern.compile(" id=\"([^\"]+)\"").matcher(web.listPack(DocumentSamples.pack(), STYLE));
        List<String> ids = new ArrayList<>();
        while (id.find()) {
            ids.add(id.group(1));
        }
        assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void namesWithMarkupArePrintedLiterally() {
        var hostile = new Comparison(
                SampleSheets.sheets().subList(0, 2),
                new org.benchleaf.render.page.Shop("A & B <b>Nursery</b>", "<script>alert(1)</script>"));
        assertThat(web.comparison(hostile, STYLE))
                .contains("A &amp; B &lt;b&gt;Nursery")
                .doesNotContain("<script>", "<b>Nursery");
    }
}
