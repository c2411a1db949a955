package org.benchleaf.app.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/// The machine's own Chromium, driven by Playwright. Belongs to the thread that runs the tests.
public final class Chromium implements AutoCloseable {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");

    /// Milliseconds. How soon a page is right is measured elsewhere; a busy machine must not fail a test.
    private static final double PATIENCE = 120_000;

    private final Playwright playwright;
    private final Browser browser;

    private Chromium(Playwright playwright, Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    /// Where it is installed.
    static Optional<Path> program() {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Arrays.stream(path.split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    static Chromium start() {
        return start(List.of());
    }

    /// One of one's own, with more options on its command line, such as a camera that films a file; close it.
    public static Chromium start(List<String> options) {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE);
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        List<String> all = Stream.concat(
                        Stream.of("--no-sandbox", "--disable-quic", "--disable-gpu", "--disable-dev-shm-usage"),
                        options.stream())
                .toList();
        Browser browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program().orElseThrow())
                        .setArgs(all));
        return new Chromium(playwright, browser);
    }

    /// Opens an address as somebody new would: without cookies and memory.
    public Sight open(Look look, String address) {
        Sight sight = open(look, options -> options);
        sight.go(address);
        return sight;
    }

    /// An empty window.
    ///
    /// @param options for the context, such as no script or no animations
    public Sight open(Look look, UnaryOperator<Browser.NewContextOptions> options) {
        BrowserContext context = browser.newContext(options.apply(new Browser.NewContextOptions()
                .setViewportSize(look.width(), look.height())
                .setHasTouch(look.isPhone())
                .setIsMobile(look.isPhone())
                .setLocale("en-US")
                .setColorScheme(look.dark() ? ColorScheme.DARK : ColorScheme.LIGHT)));
        context.setDefaultTimeout(PATIENCE);
        return new Sight(look, context);
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
