package org.benchleaf.app.service;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.content.Wording;
import org.benchleaf.search.substitute.Aspect;
import org.benchleaf.search.substitute.Comparison;
import org.benchleaf.search.substitute.Offer;
import org.benchleaf.search.substitute.Point;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.SaleVerdict;

/// A substitute beside its original, in sentences.
public final class ComparisonWords {
    /// So many who name it are told by name.

    private final Wording words;
    private final Spoken spoken;

    public ComparisonWords(Wording words) {
        this.words = words;
        this.spoken = new Spoken(words);
    }

    /// One aspect: goes on after "It" when it differs, stands alone when it agrees.
    public String point(Point point) {
        return words.text(
                "substitute." + point.aspect() + "." + point.relation(),
                Map.of(
                        "is", point.substitute().map(spoken::fact).orElse(""),
                        "was", point.original().map(spoken::fact).orElse("")));
    }

    /// `It stays lower, 3 to 4 feet instead of 6 to 8 feet.`
    public String sentence(Point point) {
        return words.text("substitute.sentence", Map.of("clause", point(point)));
    }

    /// What differs, one sentence an aspect.
    public String differs(Comparison comparison) {
        return comparison.differs().stream().map(this::sentence).collect(Collectors.joining(" "));
    }

    /// What agrees, in a list.
    public String agrees(Comparison comparison) {
        return String.join(
                "; ", comparison.agrees().stream().map(this::point).distinct().toList());
    }

    /// In what the substitute is better, in words of a list.
    public String better(Comparison comparison) {
        return words.listOf(comparison.better().stream()
                .map(point -> aspect(point.aspect()))
                .toList());
    }

    public String unknown(Comparison comparison) {
        return words.listOf(comparison.unknown().stream().map(this::aspect).toList());
    }

    /// The word for an aspect.
    public String aspect(Aspect aspect) {
        return words.text("substitute.aspect." + aspect);
    }

    /// What can harm more than the original does.
    public List<String> hazards(Substitute substitute) {
        return substitute.hazards().stream().map(words::caution).toList();
    }

    public List<String> troubles(Substitute substitute) {
        return substitute.troubles().stream()
                .map(trouble ->
                        words.text("substitute.trouble", Map.of("trouble", trouble.name(), "source", trouble.source())))
                .toList();
    }

    /// Who names it instead of the original, a few of them by name; empty when nobody does.
    public String namedBy(Substitute substitute) {
        return InsteadWords.publishers(substitute.namedBy(), words);
    }

    /// What the sale rules say, when they say anything but that no rule stands against it.
    public Optional<String> sale(Substitute substitute) {
        return substitute
                .sale()
                .filter(verdict -> verdict.answer() != SaleVerdict.Answer.NO_RULE)
                .map(words::verdict);
    }

    /// Whether the site's zone was asked and the plant's is not known.
    public boolean isHardinessUnknown(Substitute substitute) {
        return substitute.match().fit().reasons().stream()
                .anyMatch(reason -> reason instanceof Reason.Unknown(Wish wish) && wish instanceof Wish.HardyIn);
    }

    /// What can be had of it and what it costs beside the original.
    public String offer(Substitute substitute) {
        if (substitute.offer().isEmpty()) {
            return words.text("substitute.no-offer");
        }
        Offer offer = substitute.offer().get();
        String size = words.size(offer.item().size(), offer.item().form());
        String had = words.text(
                offer.isPartial() ? "substitute.offer.partial" : "substitute.offer",
                Map.of("size", size, "count", words.count(offer.free()), "asked", words.count(offer.asked())));
        return offer.item()
                .price()
                .map(price -> priced(had, price, offer.dearer()))
                .orElse(had);
    }

    private String priced(String had, Money price, Optional<Long> dearer) {
        Map<String, String> values = Map.of(
                "offer", had,
                "price", words.money(price),
                "difference", words.money(new Money(Math.abs(dearer.orElse(0L)), price.currency())));
        String key = dearer.map(more -> more > 0 ? ".dearer" : more < 0 ? ".cheaper" : ".same-price")
                .orElse(".price");
        return words.text("substitute.offer" + key, values);
    }
}
