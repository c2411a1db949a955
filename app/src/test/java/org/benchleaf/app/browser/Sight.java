package org.benchleaf.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/// A window of Chromium with one page, and what a person would notice about it.
public final class Sight implements AutoCloseable {
    /// A folder that is given a picture of every page that is looked at.
    private static final Optional<Path> GALLERY =
            Optional.ofNullable(System.getenv("BENCHLEAF_GALLERY")).map(Path::of);

    private static final int MOST_STOPS = 400;

    private final Look look;
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new ArrayList<>();

    Sight(Look look, BrowserContext context) {
        this.look = look;
        this.context = context;
        this.page = context.newPage();
        page.onPageError(error -> complaints.add("script: " + error));
        page.onConsoleMessage(message -> {
            // a status that a test asked for is not a complaint: "Failed to load resource: ... 404"
            if (message.type().equals("error") && !message.text().startsWith("Failed to load resource")) {
                complaints.add("console: " + message.text());
            }
        });
    }

    /// Playwright's own page, to click and type.
    public Page page() {
        return page;
    }

    public Look look() {
        return look;
    }

    public BrowserContext context() {
        return context;
    }

    public Sight go(String address) {
        page.navigate(address);
        return this;
    }

    /// Holds the page, as it stands, against what everyone can use: no violation found by axe, nothing that needs
    /// scrolling sideways, no script or style refused. Keeps a picture when a gallery is asked for.
    ///
    /// @param name what is seen, for the message and the picture
    public void isSound(String name) {
        picture(name);
        AxeResults axe = new AxeBuilder(page).analyze();
        List<String> found = new ArrayList<>(complaints);
        axe.getViolations().forEach(rule -> found.add(told(rule)));
        Object wide = page.evaluate("() => [...document.querySelectorAll('body *')]"
                + ".filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1"
                + " && !e.closest('[data-scrolls]') && getComputedStyle(e).position !== 'absolute')"
                + ".map(e => e.tagName + '.' + e.className).slice(0, 5)");
        ((List<?>) wide).forEach(element -> found.add("wider than the window: " + element));
        complaints.clear();
        assertThat(found).as("%s, %s", name, look).isEmpty();
    }

    private static String told(Rule rule) {
        return "axe " + rule.getId() + ": " + rule.getHelp() + " at "
                + rule.getNodes().stream()
                        .limit(3)
                        .map(node -> node.getTarget() + " " + node.getHtml())
                        .collect(Collectors.joining("; "));
    }

    private void picture(String name) {
        GALLERY.ifPresent(folder -> page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(folder.resolve(name.replaceAll("[^a-z0-9]+", "-") + "-" + look.text() + ".png"))));
    }

    /// Goes there by the Tab key alone, as somebody without a mouse does.
    ///
    /// @param selector what is to be reached
    /// @throws AssertionError when it is not reached, or a stop on the way cannot be seen to have the focus
    public void tabTo(String selector) {
        page.locator(selector).first().waitFor(); // a person does not press before there is anything
        for (int stop = 0; stop < MOST_STOPS; stop++) {
            page.keyboard().press("Tab");
            Object reached = page.evaluate("s => document.activeElement.matches(s)", selector);
            Object shown = page.evaluate("() => { const e = document.activeElement, c = getComputedStyle(e);"
                    + " return e === document.body || (c.outlineStyle !== 'none' && parseFloat(c.outlineWidth) > 0)"
                    + " || c.boxShadow !== 'none'; }");
            assertThat(shown)
                    .as("focus can be seen at stop %d on the way to %s", stop, selector)
                    .isEqualTo(true);
            if (Boolean.TRUE.equals(reached)) {
                return;
            }
        }
        throw new AssertionError(selector + " is not reached by Tab on " + page.url());
    }

    /// Presses a key: `Enter`, `Space`, `Escape`.
    public void press(String key) {
        page.keyboard().press(key);
    }

    @Override
    public void close() {
        context.close();
    }
}
