package org.benchleaf.app;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.benchleaf.catalog.CatalogLocation;
import org.benchleaf.content.PriceTier;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.rule.Destination;

/// What a shop decides, read once at start from `settings.properties` in its workspace; immutable.
///
/// @param shopName printed at the foot of every page
/// @param shopLine street, place, telephone or address on one line; may be empty
/// @param base where printed codes lead: scheme, host and port of the server as shoppers reach it
/// @param language of pages and messages
/// @param lengths units of lengths
/// @param place where the shop ships from, for sale rules; a county may be given
/// @param database the address of a PostgreSQL server that holds the catalog; empty for a file in the
///     workspace. Holds no password: that is never written down
/// @param choices what it calls container classes, whom it believes, and the look of its paper
/// @param proxy network addresses of the TLS proxy in front of the server, through which staff may sign
///     in from elsewhere; empty when there is none
public record Settings(
        String shopName,
        String shopLine,
        URI base,
        Locale language,
        LengthStyle lengths,
        Optional<Destination> place,
        Optional<String> database,
        Choices choices,
        Set<String> proxy) {
    public static final String FILE = "settings.properties";
    /// Environment variables that hold what must not lie in a file.
    public static final String DATABASE_USER = "BENCHLEAF_DATABASE_USER";

    public static final String DATABASE_PASSWORD = "BENCHLEAF_DATABASE_PASSWORD";

    private static final Pattern PASSWORD = Pattern.compile("[?&](?:password|sslpassword)=|//[^/@]*:[^/@]*@");
    private static final Pattern ADDRESS = Pattern.compile("\\d{1,3}(?:\\.\\d{1,3}){3}|[0-9a-fA-F:]*:[0-9a-fA-F:.]+");
    private static final Set<String> KEYS = new TreeSet<>(Set.of(
            "shop.name",
            "shop.line",
            "base",
            "language",
            "lengths",
            "place",
            "database",
            "containers",
            "sources",
            "counts",
            "prices",
            "palette",
            "accent",
            "logo",
            "paper",
            "tiers",
            "proxy"));

    public Settings {
        proxy = Set.copyOf(proxy);
    }

    /// Settings of a shop that does not say where it is.
    public Settings(String shopName, String shopLine, URI base, Locale language, LengthStyle lengths) {
        this(shopName, shopLine, base, language, lengths, Optional.empty());
    }

    /// Settings of a shop whose catalog lies in a file of its workspace.
    public Settings(
            String shopName,
            String shopLine,
            URI base,
            Locale language,
            LengthStyle lengths,
            Optional<Destination> place) {
        this(shopName, shopLine, base, language, lengths, place, Optional.empty());
    }

    /// Settings of a shop that has no choices of its own.
    public Settings(
            String shopName,
            String shopLine,
            URI base,
            Locale language,
            LengthStyle lengths,
            Optional<Destination> place,
            Optional<String> database) {
        this(shopName, shopLine, base, language, lengths, place, database, Choices.USUAL, Set.of());
    }

    /// Reads a workspace's settings.
    ///
    /// @throws Refusal when a key is unknown or missing, or a value has no meaning
    public static Settings read(Path file) {
        SettingsTrouble trouble = new SettingsTrouble(file);
        Properties properties = new Properties();
        try (Reader reader = new StringReader(Files.readString(file))) {
            properties.load(reader);
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new Refusal(Problem.of("settings.unreadable", file.toString()));
        }
        for (String key : properties.stringPropertyNames()) {
            if (!KEYS.contains(key)) {
                throw trouble.unknown(key, String.join(", ", KEYS));
            }
        }
        String base = value(properties, trouble, "base");
        URI address =
                LiveLink.readBase(base).toOptional().orElseThrow(() -> new Refusal(Problem.of("base.unknown", base)));
        String units = value(properties, trouble, "lengths");
        return new Settings(
                value(properties, trouble, "shop.name"),
                Optional.ofNullable(properties.getProperty("shop.line")).orElse(""),
                address,
                Locale.forLanguageTag(value(properties, trouble, "language")),
                lengths(units).orElseThrow(() -> trouble.value("lengths", units, "imperial, metric, both")),
                place(properties, trouble),
                database(properties.getProperty("database", "")),
                choices(properties, trouble),
                proxy(properties, trouble));
    }

    private static Set<String> proxy(Properties properties, SettingsTrouble trouble) {
        String text = properties.getProperty("proxy", "").strip();
        Set<String> addresses = new TreeSet<>();
        for (String address : text.split("[,\\s]+")) {
            if (!address.isEmpty() && !ADDRESS.matcher(address).matches()) {
                throw trouble.value("proxy", text, "127.0.0.1, 192.168.1.5 (network addresses)");
            }
            if (!address.isEmpty()) {
                addresses.add(address);
            }
        }
        return addresses;
    }

    private static Choices choices(Properties properties, SettingsTrouble trouble) {
        String containers = properties.getProperty("containers", "");
        String sources = properties.getProperty("sources", "");
        String counts = properties.getProperty("counts", "");
        String prices = properties.getProperty("prices", "");
        String tiers = properties.getProperty("tiers", "");
        return new Choices(
                Choices.containers(containers)
                        .orElseThrow(() -> trouble.value("containers", containers, "number, gallon")),
                Choices.sources(sources)
                        .orElseThrow(() -> trouble.value("sources", sources, "shop, \"USDA PLANTS\", Rutgers")),
                Choices.telling(counts, prices)
                        .orElseThrow(() -> trouble.value(
                                "counts, prices", counts + ", " + prices, "public, coarse, hidden; public, hidden")),
                ShopLook.read(properties, trouble),
                PriceTier.read(tiers).orElseThrow(() -> trouble.value("tiers", tiers, "landscaper 1.15, retail 2.2")));
    }

    /// Reads the address of a database server.
    ///
    /// @return empty for an empty text
    /// @throws Refusal when it is no address of PostgreSQL, or holds a password
    public static Optional<String> database(String text) {
        String url = text.strip();
        if (PASSWORD.matcher(url).find()) {
            throw new Refusal(Problem.of("settings.password", DATABASE_PASSWORD));
        }
        if (!url.isEmpty() && !url.startsWith(CatalogLocation.OnServer.SCHEME)) {
            throw new Refusal(Problem.of("settings.database", url));
        }
        return url.isEmpty() ? Optional.empty() : Optional.of(url);
    }

    private static Optional<Destination> place(Properties properties, SettingsTrouble trouble) {
        String text = properties.getProperty("place", "").strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Destination.read(text)
                .toOptional()
                .orElseThrow(() -> trouble.value("place", text, "US-PA, US-NY / Suffolk")));
    }

    private static String value(Properties properties, SettingsTrouble trouble, String key) {
        String value = properties.getProperty(key, "").strip();
        if (value.isEmpty()) {
            throw trouble.missing(key);
        }
        return value;
    }

    private static Optional<LengthStyle> lengths(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "imperial" -> Optional.of(LengthStyle.IMPERIAL);
            case "metric" -> Optional.of(LengthStyle.METRIC);
            case "both" -> Optional.of(LengthStyle.BOTH);
            default -> Optional.empty();
        };
    }

    /// The same settings with codes that lead elsewhere.
    public Settings withBase(URI other) {
        return new Settings(shopName, shopLine, other, language, lengths, place, database, choices, proxy);
    }

    /// The text of the file that reads back as these settings.
    public String text() {
        return SettingsText.of(this);
    }
}
