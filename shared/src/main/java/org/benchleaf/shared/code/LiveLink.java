package org.benchleaf.shared.code;

import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The address printed in a code: where a plant, or one item of it, is looked up for ever after.
///
/// Scheme and host ignore case, and so does our own path; written in capitals the whole address lies within the
/// alphanumeric mode of a QR code, which needs fewer and so larger modules.
///
/// @param base scheme, host and port of the shop's server; no path, query or fragment
/// @param plant the plant
/// @param item the item's number, when the code stands for one item
public record LiveLink(URI base, PlantKey plant, Optional<Integer> item) {
    private static final Pattern PATH = Pattern.compile("/[Pp]/([0-9A-Za-z]{7})(?:-(\\d{1,3}))?/?");

    public LiveLink {
        if (!isBase(base)) {
            throw new IllegalArgumentException("the base of a live link is http(s)://host[:port] alone; got " + base);
        }
    }

    public static LiveLink of(URI base, PlantKey plant) {
        return new LiveLink(base, plant, Optional.empty());
    }

    public static LiveLink of(URI base, ItemKey item) {
        return new LiveLink(base, item.plant(), Optional.of(item.number()));
    }

    /// Reads the address of a server as people write it; a closing slash is dropped.
    public static Reading<URI> readBase(String text) {
        try {
            URI base = URI.create(text.strip().replaceAll("/+$", ""));
            return isBase(base) ? Reading.of(base) : Reading.refused("base.unknown", text);
        } catch (IllegalArgumentException notAnAddress) {
            return Reading.refused("base.unknown", text);
        }
    }

    /// Reads a printed address, whatever server it names: a code outlives the move to another host.
    public static Reading<LiveLink> read(String text) {
        try {
            URI uri = URI.create(text.strip());
            if (uri.getScheme() == null || uri.getHost() == null) {
                return Reading.refused("link.unknown", text);
            }
            URI base = URI.create((uri.getScheme() + "://" + uri.getAuthority()).toLowerCase(Locale.ROOT));
            if (!isBase(base)) {
                return Reading.refused("link.unknown", text);
            }
            return readPath(uri.getPath(), base);
        } catch (IllegalArgumentException notAnAddress) {
            return Reading.refused("link.unknown", text);
        }
    }

    private static Reading<LiveLink> readPath(String path, URI base) {
        Matcher matcher = PATH.matcher(path);
        if (!matcher.matches()) {
            return Reading.refused("link.unknown", path);
        }
        Optional<Integer> item = Optional.ofNullable(matcher.group(2)).map(Integer::valueOf);
        return PlantKey.read(matcher.group(1)).map(plant -> new LiveLink(base, plant, item));
    }

    private static boolean isBase(URI base) {
        boolean web = "http".equalsIgnoreCase(base.getScheme()) || "https".equalsIgnoreCase(base.getScheme());
        return web
                && base.getHost() != null
                && base.getUserInfo() == null
                && base.getRawPath().isEmpty()
                && base.getRawQuery() == null
                && base.getRawFragment() == null;
    }

    /// The path on the server: `/p/K7QMN2X` or `/p/K7QMN2X-3`.
    public String path() {
        return "/p/" + plant + item.map(number -> "-" + number).orElse("");
    }

    /// The address for a code: `HTTPS://SHOP.EXAMPLE/P/K7QMN2X-3`.
    public String forCode() {
        return (base + path()).toUpperCase(Locale.ROOT);
    }

    /// The address for people: `https://shop.example/p/K7QMN2X-3`.
    @Override
    public String toString() {
        return base + path();
    }
}
