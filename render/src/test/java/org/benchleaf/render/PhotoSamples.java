package org.benchleaf.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Photo;
import org.benchleaf.render.page.PlantSheet;

/// Sample pages without a photograph, and again with each kind of one.
final class PhotoSamples {
    static final Photo LYING = new Photo("lying.jpg", "A. Grower", "CC BY 4.0");
    static final Photo STANDING = new Photo("standing.jpg", "", "");
    static final Photo WIDE = new Photo("wide.png", "A. Grower", "");

    private PhotoSamples() {}

    static List<BenchCard> withPhotos(List<BenchCard> cards) {
        List<BenchCard> all = new ArrayList<>(cards);
        for (BenchCard card : cards) {
            for (Photo photo : List.of(LYING, STANDING, WIDE)) {
                all.add(with(card, photo));
            }
        }
        return all;
    }

    static List<PlantSheet> sheetsWithPhotos(List<PlantSheet> sheets) {
        List<PlantSheet> all = new ArrayList<>(sheets);
        for (PlantSheet sheet : sheets) {
            for (Photo photo : List.of(LYING, STANDING, WIDE)) {
                all.add(with(sheet, photo));
            }
        }
        return all;
    }

    static BenchCard with(BenchCard card, Photo photo) {
        return new BenchCard(
                card.title(),
                card.whyNow(),
                card.exposure(),
                card.waterNeed(),
                card.moisture(),
                card.hardiness(),
                card.height(),
                card.spread(),
                card.year(),
                card.cautions(),
                card.notices(),
                card.stockSize(),
                card.form(),
                card.price(),
                card.link(),
                card.shop(),
                Optional.of(photo));
    }

    static PlantSheet with(PlantSheet sheet, Photo photo) {
        return new PlantSheet(
                sheet.title(),
                sheet.whyNow(),
                sheet.description(),
                sheet.facts(),
                sheet.year(),
                sheet.size(),
                sheet.cautions(),
                sheet.saleNotes(),
                sheet.relatives(),
                sheet.stock(),
                sheet.link(),
                sheet.shop(),
                Optional.of(photo));
    }
}
