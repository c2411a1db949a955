package org.benchleaf.render.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.code.LiveLink;

/// The product sheet of one plant, on paper and as its live page.
///
/// @param title names and family
/// @param whyNow the selling note: why it is worth buying now, one line
/// @param description one or two sentences
/// @param facts what is known, any order; printed in the order of [FactKind]
/// @param year data of the year ring
/// @param size data of the size stand
/// @param cautions what can hurt whom; an empty list does not say that it is safe
/// @param saleNotes what states say
/// @param relatives plants it is compared with
/// @param stock what can be had, when it is to be shown
/// @param link the live page, printed as a code
/// @param shop who prints
/// @param photo leads the page when there is one
public record PlantSheet(
        PlantTitle title,
        Optional<String> whyNow,
        Optional<String> description,
        List<PageFact> facts,
        YearLook year,
        SizeLook size,
        List<PageCaution> cautions,
        List<SaleNote> saleNotes,
        List<Relative> relatives,
        Optional<StockBlock> stock,
        LiveLink link,
        Shop shop,
        Optional<Photo> photo) {
    public PlantSheet {
        facts = List.copyOf(facts);
        cautions = List.copyOf(cautions);
        saleNotes = List.copyOf(saleNotes);
        relatives = List.copyOf(relatives);
    }
}
