package org.benchleaf.app.web.staff;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.LogoFile;
import org.benchleaf.app.PrinterShelf;
import org.benchleaf.app.Settings;
import org.benchleaf.app.SettingsFile;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.app.web.route.Upload;
import org.benchleaf.catalog.prints.PrintedBase;
import org.benchleaf.content.Palette;
import org.benchleaf.render.Calibration;
import org.benchleaf.render.SheetFormat;
import org.benchleaf.render.picture.Logo;
import org.benchleaf.shared.rule.Destination;

/// What the shop decides: its name and address, where its codes lead, what strangers see, its words, inks and printers.
final class ShopPages {
    private static final Access OWN = new Access.SignedIn(Right.OWN);
    private static final List<String> KEYS = List.of(
            "shop.name",
            "shop.line",
            "base",
            "place",
            "language",
            "lengths",
            "containers",
            "palette",
            "accent",
            "paper",
            "counts",
            "prices");
    private static final Set<String> LOGOS = Set.of("png", "jpg", "jpeg", "svg");
    private static final List<String> MEASURES = List.of("left", "top", "wide", "tall");

    private final Desk desk;
    private final Benchleaf benchleaf;
    private final SettingsFile file;
    private final PrinterShelf printers;

    ShopPages(Desk desk) {
        this.desk = desk;
        this.benchleaf = desk.benchleaf();
        this.file = new SettingsFile(benchleaf.workspace());
        this.printers = new PrinterShelf(benchleaf.workspace());
    }

    List<Route> routes() {
        return List.of(
                Route.get("/desk/shop", OWN, Keeping.NEVER, Headers.PAGE, this::open),
                Route.post("/desk/shop", OWN, Headers.PAGE, this::save),
                Route.post("/desk/shop/logo", OWN, Headers.PAGE, this::logo).upTo(Logo.LARGEST + 64 * 1024L),
                Route.get("/desk/shop/calibration", OWN, Keeping.NEVER, Headers.FILE, this::calibration),
                Route.post("/desk/shop/printer", OWN, Headers.PAGE, this::measured));
    }

    /// How many pieces of paper lead to an address.
    public record Field(String base, String copies) {}

    private Reply open(Request request) {
        return page(request, now(), false, "");
    }

    /// The settings as their file has them, field by field.
    private Map<String, String> now() {
        Settings read = Settings.read(benchleaf.workspace().settingsFile());
        Map<String, String> values = new LinkedHashMap<>();
        values.put("shop.name", read.shopName());
        values.put("shop.line", read.shopLine());
        values.put("base", read.base().toString());
        values.put("place", read.place().map(Destination::toString).orElse(""));
        values.put("language", read.language().toLanguageTag());
        values.put("lengths", read.lengths().name().toLowerCase(Locale.ROOT));
        values.put("containers", read.choices().containers().name().toLowerCase(Locale.ROOT));
        values.put("palette", read.choices().look().palette());
        values.put(
                "accent",
                read.choices()
                        .look()
                        .accent()
                        .map(ink -> ink.toString().toLowerCase(Locale.ROOT))
                        .orElse(""));
        values.put("paper", read.choices().look().paper().name().toLowerCase(Locale.ROOT));
        values.put(
                "counts",
                switch (read.choices().telling().counts()) {
                    case EXACT -> "public";
                    case COARSE -> "coarse";
                    case HIDDEN -> "hidden";
                });
        values.put("prices", read.choices().telling().prices() ? "public" : "hidden");
        return values;
    }

    /// @param warned whether the address is another one and codes in the field lead to the old
    private Reply page(Request request, Map<String, String> values, boolean warned, String trouble) {
        return desk.page(
                request,
                "shop",
                "desk.way.shop",
                Map.of(
                        "value", values,
                        "logo", hasLogo(),
                        "choices", choices(),
                        "printed", field(),
                        "warned", warned,
                        "printers", printers.names()),
                trouble);
    }

    private boolean hasLogo() {
        return Settings.read(benchleaf.workspace().settingsFile())
                .choices()
                .look()
                .logo()
                .isPresent();
    }

    private List<Field> field() {
        return benchleaf.prints().bases().stream()
                .map(base -> new Field(base.base(), desk.wording().count(base.copies())))
                .toList();
    }

    private Map<String, List<PrintOptions.Choice>> choices() {
        Locale here = benchleaf.language();
        return Map.of(
                "language",
                benchleaf.paperLanguages().stream()
                        .map(code -> new PrintOptions.Choice(
                                code, desk.wording().sentence(Locale.of(code).getDisplayLanguage(here))))
                        .toList(),
                "lengths",
                choices("desk.print.units.", "imperial", "metric", "both"),
                "containers",
                choices("desk.shop.containers.", "number", "gallon"),
                "palette",
                benchleaf.content().palettes().stream()
                        .map(Palette::name)
                        .map(name -> new PrintOptions.Choice(name, name))
                        .toList(),
                "paper",
                choices("desk.print.page.", "letter", "a4"),
                "counts",
                choices("desk.shop.counts.", "public", "coarse", "hidden"),
                "prices",
                choices("desk.shop.prices.", "public", "hidden"));
    }

    private List<PrintOptions.Choice> choices(String word, String... values) {
        return java.util.Arrays.stream(values)
                .map(value -> new PrintOptions.Choice(value, desk.wording().text(word + value)))
                .toList();
    }

    private Reply save(Request request) {
        Map<String, String> sent = new LinkedHashMap<>();
        KEYS.forEach(key -> sent.put(key, Desk.field(request, key)));
        return Desk.attempt(
                () -> {
                    long old = inTheField();
                    boolean moves = !sent.getOrDefault("base", "").equals(now().get("base"));
                    if (moves && old > 0 && Desk.field(request, "sure").isEmpty()) {
                        return page(request, sent, true, "").withStatus(422);
                    }
                    if (benchleaf.content().palettes().stream()
                            .map(Palette::name)
                            .noneMatch(name -> name.equals(sent.get("palette")))) {
                        throw Desk.refusal("desk.form", "palette");
                    }
                    if (!benchleaf.paperLanguages().contains(sent.get("language"))) {
                        throw Desk.refusal("desk.form", "language");
                    }
                    file.change(sent);
                    benchleaf.accounts().wrote(desk.actor(request), "settings.changed", "");
                    return Reply.seeOther("/desk/shop?done=shop-saved");
                },
                desk.wording(),
                trouble -> page(request, sent, false, trouble).withStatus(422));
    }

    /// Pieces of paper whose codes lead to the address that holds now.
    private long inTheField() {
        String base = now().getOrDefault("base", "");
        return benchleaf.prints().bases().stream()
                .filter(one -> one.base().equals(base))
                .mapToLong(PrintedBase::copies)
                .sum();
    }

    /// A picture becomes the logo only when it can be printed; the file that was the logo before is replaced last.
    private Reply logo(Request request) {
        return Desk.attempt(
                () -> {
                    if (Desk.field(request, "none").equals("yes")) {
                        file.change("logo", "");
                    } else {
                        Upload upload =
                                request.upload("logo").orElseThrow(() -> Desk.refusal("desk.shop.logo.file", ""));
                        keep(upload);
                    }
                    benchleaf.accounts().wrote(desk.actor(request), "settings.changed", "");
                    return Reply.seeOther("/desk/shop?done=shop-saved");
                },
                desk.wording(),
                trouble -> page(request, now(), false, trouble).withStatus(422));
    }

    private void keep(Upload upload) {
        String name = upload.name();
        if (upload.bytes() > Logo.LARGEST) {
            throw Desk.refusal("desk.shop.logo.large", name);
        }
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (!LOGOS.contains(ending)) {
            throw Desk.refusal("logo.unreadable", name);
        }
        String kept = "logo." + ending;
        try (InputStream content = upload.content()) {
            byte[] bytes = content.readNBytes(Logo.LARGEST);
            LogoFile.read(bytes, name);
            Path folder = benchleaf.workspace().folder();
            Path part = Files.createTempFile(folder, ".logo-", ".tmp");
            try {
                Files.write(part, bytes);
                Files.move(part, folder.resolve(kept), StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part);
            }
            file.change("logo", kept);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private Reply calibration(Request request) {
        SheetFormat format =
                request.query("paper").filter("a4"::equals).isPresent() ? SheetFormat.A4 : SheetFormat.LETTER;
        String name = request.query("name").filter(text -> !text.isBlank()).orElse("office");
        try {
            Path folder = Files.createDirectories(benchleaf.workspace().folder().resolve("print"));
            Path page = Files.createTempFile(folder, "look-", ".pdf");
            try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
                benchleaf.printing().calibration(format, name.substring(0, Math.min(40, name.length())), page);
                Files.copy(page, out);
                return Reply.of("application/pdf", out.toByteArray()).download("calibration.pdf");
            } finally {
                Files.deleteIfExists(page);
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private Reply measured(Request request) {
        return Desk.attempt(
                () -> {
                    double[] lengths = new double[MEASURES.size()];
                    for (int at = 0; at < lengths.length; at++) {
                        lengths[at] = millimeters(Desk.field(request, MEASURES.get(at)));
                    }
                    try {
                        printers.keep(
                                Desk.field(request, "printer"),
                                Calibration.measured(lengths[0], lengths[1], lengths[2], lengths[3]));
                    } catch (IllegalArgumentException tooFar) {
                        throw Desk.refusal("desk.shop.printer.far", String.valueOf(tooFar.getMessage()));
                    }
                    return Reply.seeOther("/desk/shop?done=printer-kept");
                },
                desk.wording(),
                trouble -> page(request, now(), false, trouble).withStatus(422));
    }

    private static double millimeters(String text) {
        if (!text.matches("\\d{1,3}(?:[.,]\\d{1,2})?")) {
            throw Desk.refusal("desk.shop.millimeters", text);
        }
        return Double.parseDouble(text.replace(',', '.'));
    }
}
