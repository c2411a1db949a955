package org.benchleaf.app;

import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.benchleaf.content.PriceTier;
import org.benchleaf.shared.rule.Destination;

/// The settings as a file, with a word on each for whoever opens it.
final class SettingsText {
    private SettingsText() {}

    static String of(Settings settings) {
        return """
                # What this shop decides. Words a shop may change lie in content/ beside this file.
                shop.name = %s
                shop.line = %s
                # where printed codes lead: the address by which shoppers reach the server
                base = %s
                # of pages and messages: en
                language = %s
                # imperial, metric or both
                lengths = %s
                # where plants are shipped from, for sale rules: US-PA or US-NY / Suffolk; may be empty
                place = %s
                # a PostgreSQL server that holds the catalog: jdbc:postgresql://host/database; empty for the file
                # benchleaf.db. User and password come from BENCHLEAF_DATABASE_USER and BENCHLEAF_DATABASE_PASSWORD
                database = %s
                # number or gallon: whether a container of class #3 is called #3 or 3 gal here; a class is no gallon
                containers = %s
                # whom to believe when sources disagree, after the shop's own word: shop, "USDA PLANTS", Rutgers
                sources = %s
                # what strangers see of counts: public, coarse (plenty, few) or hidden; staff sees all
                counts = %s
                # and of prices: public or hidden
                prices = %s
                # what kinds of customers pay, times the wholesale price: landscaper 1.15, retail 2.2; may be empty
                tiers = %s
                # inks of paper: slate, fern, loam, dusk, or one of the shop's own content/palettes.csv
                palette = %s
                # an ink of the shop's own for headings and lines, as #7a3f1d; empty for that of the palette
                accent = %s
                # a PNG, JPEG or SVG file beside this one, for the head of pages; empty for none
                logo = %s
                # of whole-page documents: letter or a4
                paper = %s
                # network address of the TLS proxy in front of the server, such as 127.0.0.1: staff then sign in through it
                # from elsewhere; empty: staff sign in on this computer only
                proxy = %s
                """.formatted(
                settings.shopName(),
                settings.shopLine(),
                settings.base(),
                settings.language().toLanguageTag(),
                settings.lengths().name().toLowerCase(Locale.ROOT),
                settings.place().map(Destination::toString).orElse(""),
                settings.database().orElse(""),
                settings.choices().containers().name().toLowerCase(Locale.ROOT),
                settings.choices().sourcesText(),
                settings.choices().countsText(),
                settings.choices().pricesText(),
                settings.choices().tiers().stream().map(PriceTier::toString).collect(Collectors.joining(", ")),
                settings.choices().look().palette(),
                settings.choices().look().accentText(),
                settings.choices().look().logo().orElse(""),
                settings.choices().look().paperText(),
                String.join(", ", new TreeSet<>(settings.proxy())));
    }
}
