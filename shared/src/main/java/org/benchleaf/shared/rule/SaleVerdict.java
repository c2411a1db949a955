package org.benchleaf.shared.rule;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// What the lists known here say of a shipment. They may be old and incomplete: local law decides.
///
/// @param shipment what was judged
/// @param rulings every rule that has to do with the place, the strictest in force first
/// @param covered whether the lists hold any rule of that state or province at all
/// @param compiledOn when the newest of the lists was compiled
public record SaleVerdict(Shipment shipment, List<Ruling> rulings, boolean covered, LocalDate compiledOn) {
    /// The verdict in one word.
    public enum Answer {
        /// It may not be sold, or not be brought in.
        BARRED,
        /// It may be sold under a condition or with a notice.
        ON_CONDITION,
        /// It may be sold; planting it is advised against.
        ADVISED_AGAINST,
        /// No rule in the lists stands against it.
        NO_RULE,
        /// The plant's name does not say enough.
        UNCLEAR,
        /// The lists hold nothing of that place.
        NOT_COVERED
    }

    public SaleVerdict {
        rulings = List.copyOf(rulings);
    }

    /// The strictest standing for a sale there that day.
    public Optional<SaleStanding> sale() {
        return rulings.stream()
                .flatMap(ruling -> ruling.saleStanding().stream())
                .min(Comparator.naturalOrder());
    }

    /// The strictest standing for a new receipt there that day.
    public Optional<SaleStanding> receipt() {
        return rulings.stream()
                .flatMap(ruling -> ruling.receiptStanding().stream())
                .min(Comparator.naturalOrder());
    }

    /// What holds for the shipment: the sale, and the receipt too when it comes from outside the rule's area.
    public Optional<SaleStanding> standing() {
        return deciding().flatMap(this::of);
    }

    /// The ruling that decides, when one is in force.
    public Optional<Ruling> deciding() {
        return rulings.stream()
                .filter(ruling -> of(ruling).isPresent())
                .min(Comparator.comparing((Ruling ruling) -> of(ruling).orElseThrow()));
    }

    /// What one ruling means for this shipment.
    public Optional<SaleStanding> of(Ruling ruling) {
        boolean comesIn = shipment.from()
                .map(place -> !ruling.match().area().covers(place))
                .orElse(false);
        return comesIn ? ruling.receiptStanding() : ruling.saleStanding();
    }

    public Answer answer() {
        Optional<SaleStanding> standing = standing();
        if (standing.isPresent() && standing.get() == SaleStanding.PROHIBITED) {
            return Answer.BARRED;
        }
        if (rulings.stream().anyMatch(Ruling::isUnclear)) {
            return Answer.UNCLEAR;
        }
        if (standing.isPresent()) {
            return standing.get() == SaleStanding.RESTRICTED ? Answer.ON_CONDITION : Answer.ADVISED_AGAINST;
        }
        return covered ? Answer.NO_RULE : Answer.NOT_COVERED;
    }
}
