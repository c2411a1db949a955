package org.benchleaf.app.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.content.Telling;
import org.benchleaf.render.WebPages;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.PageMeta;
import org.benchleaf.render.page.PlantSheet;
import org.benchleaf.shared.stock.Availability;

/// What a plant's page tells programs: schema.org's Product with its Offers, version 29 of the vocabulary, from memory.
record ProductData(PublicView view) {
    PageMeta meta(PlantSheet sheet, boolean retired, Telling telling) {
        String address = sheet.link().toString();
        String image = sheet.photo().map(WebPages::photoPath).map(view::address).orElse("");
        Map<String, Object> product = new LinkedHashMap<>();
        product.put("@context", "https://schema.org");
        product.put("@type", "Product");
        product.put("name", sheet.title().botanical().toString());
        if (!sheet.title().commonNames().isEmpty()) {
            product.put("alternateName", sheet.title().commonNames());
        }
        sheet.description().or(sheet::whyNow).ifPresent(text -> product.put("description", text));
        if (!image.isEmpty()) {
            product.put("image", image);
        }
        product.put("url", address);
        product.put("sku", sheet.link().plant().text());
        List<Map<String, Object>> offers = new ArrayList<>();
        sheet.stock()
                .ifPresent(stock -> stock.items().forEach(item -> offers.add(offer(item, address, retired, telling))));
        if (!offers.isEmpty()) {
            product.put("offers", offers);
        }
        return new PageMeta(address, image, Json.text(product), retired);
    }

    private Map<String, Object> offer(ItemLine item, String address, boolean retired, Telling telling) {
        Map<String, Object> offer = new LinkedHashMap<>();
        offer.put("@type", "Offer");
        offer.put("sku", item.key().toString());
        offer.put(
                "name",
                item.size()
                        + (item.form().term().equals("regular")
                                ? ""
                                : ", " + item.form().term()));
        offer.put("url", address);
        offer.put(
                "availability", "https://schema.org/" + (retired ? "Discontinued" : availability(item.availability())));
        if (item.availability() instanceof Availability.From(var week, int count)) {
            offer.put("availabilityStarts", week.monday().toString());
        }
        if (telling.isExact() && item.availability() instanceof Availability.InStock(int count)) {
            offer.put("inventoryLevel", Map.of("@type", "QuantitativeValue", "value", count));
        }
        item.price().flatMap(telling::price).ifPresent(price -> {
            offer.put("price", price.amount());
            offer.put("priceCurrency", price.currency().getCurrencyCode());
        });
        offer.put("seller", Map.of("@type", "Organization", "name", view.shop().name()));
        return offer;
    }

    private static String availability(Availability availability) {
        return switch (availability) {
            case Availability.InStock now -> "InStock";
            case Availability.From later -> "PreOrder";
            case Availability.SoldOut none -> "SoldOut";
            case Availability.Withdrawn gone -> "Discontinued";
        };
    }
}
