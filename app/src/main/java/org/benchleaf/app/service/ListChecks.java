package org.benchleaf.app.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.app.service.ListReport.Kind;
import org.benchleaf.app.service.ListReport.Line;
import org.benchleaf.app.service.ListReport.Remark;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.catalog.lists.PlantList;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.search.fit.FitJudge;
import org.benchleaf.search.fit.Occasion;
import org.benchleaf.search.pairing.Partner;
import org.benchleaf.search.pairing.PartnerFinder;
import org.benchleaf.search.pairing.Pollination;
import org.benchleaf.search.substitute.Demand;
import org.benchleaf.search.substitute.Offer;
import org.benchleaf.search.substitute.Purpose;
import org.benchleaf.search.substitute.Substitute;
import org.benchleaf.search.substitute.SubstituteFinder;
import org.benchleaf.search.substitute.SubstituteQuery;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.rule.SaleVerdict;
import org.benchleaf.shared.rule.Shipment;

/// Checks a plant list as a whole: law, site, pollination, shortages with what fills them, and safety.
public final class ListChecks {
    private static final int PROPOSED = 3;
    /// Of unsexed plants, so many make both sexes likely; ours, no source.
    private static final int SEVERAL = 3;

    private final SubstituteFinder substitutes;
    private final PartnerFinder partners;
    private final Optional<Destination> home;
    private final Wording words;
    private final FitJudge judge = new FitJudge();

    /// @param home where the shop ships from
    public ListChecks(SubstituteFinder substitutes, PartnerFinder partners, Optional<Destination> home, Wording words) {
        this.substitutes = substitutes;
        this.partners = partners;
        this.home = home;
        this.words = words;
    }

    List<Remark> of(PlantList list, List<Line> lines, LocalDate today) {
        List<Remark> remarks = new ArrayList<>();
        for (Line line : lines) {
            if (line.plant().isEmpty() || line.plant().get().retired()) {
                remarks.add(remark(Kind.GAP, true, line, words.text("list.check.gone")));
            }
            line.plant().ifPresent(plant -> {
                law(list.site(), line, plant, today).ifPresent(remarks::add);
                site(list.site(), line, plant, remarks);
                pollination(line, plant, lines).ifPresent(remarks::add);
                safety(line, plant, remarks);
                shortage(list.site(), line, plant, today, remarks);
            });
        }
        remarks.sort(Comparator.comparing((Remark remark) -> !remark.serious())
                .thenComparing(Remark::kind)
                .thenComparingInt(Remark::line));
        return remarks;
    }

    private static Remark remark(Kind kind, boolean serious, Line line, String text) {
        return new Remark(kind, serious, line.line().number(), text);
    }

    private Optional<Shipment> shipment(ListSite site, LocalDate today) {
        LocalDate day = site.by().map(YearWeek::monday).orElse(today);
        return site.shipTo().or(() -> home).map(place -> new Shipment(place, day, home));
    }

    private Optional<Remark> law(ListSite site, Line line, PlantRecord plant, LocalDate today) {
        return shipment(site, today)
                .flatMap(to -> plant.facts().value(Attributes.SALE_RULES).map(rules -> rules.at(to)))
                .filter(verdict -> verdict.answer() != SaleVerdict.Answer.NO_RULE)
                .map(verdict ->
                        remark(Kind.LAW, verdict.answer() == SaleVerdict.Answer.BARRED, line, words.verdict(verdict)));
    }

    private void site(ListSite site, Line line, PlantRecord plant, List<Remark> remarks) {
        List<Wish> wishes = new ArrayList<>();
        site.zone().map(Wish.HardyIn::new).ifPresent(wishes::add);
        site.light().map(Wish.GrowsIn::new).ifPresent(wishes::add);
        site.soil().map(Wish.LikesSoil::new).ifPresent(wishes::add);
        YearWeek any = new YearWeek(2000, 1);
        Occasion occasion = new Occasion(any, any, Optional.empty(), 1);
        for (Wish wish : wishes) {
            Reason reason = judge.judge(wish, plant.facts(), plant.name(), line.stock(), occasion);
            if (!(reason instanceof Reason.Met)) {
                remarks.add(remark(Kind.SITE, reason instanceof Reason.Missed, line, words.reason(reason)));
            }
        }
    }

    /// A plant that needs a partner finds one on the list, or those that the catalog has are named.
    private Optional<Remark> pollination(Line line, PlantRecord plant, List<Line> lines) {
        Pollination pollination = Pollination.of(plant.facts());
        boolean severalOfItself =
                pollination == Pollination.SEXES_APART && line.line().quantity() >= SEVERAL;
        if (!pollination.isRequired() || severalOfItself) {
            return Optional.empty();
        }
        List<String> onList = lines.stream()
                .flatMap(other -> other.plant().stream())
                .filter(other -> PartnerFinder.suits(plant, other).isPresent())
                .map(other -> other.name().toString())
                .distinct()
                .toList();
        if (!onList.isEmpty()) {
            return Optional.of(remark(
                    Kind.POLLINATION,
                    false,
                    line,
                    words.text("list.check.partner", Map.of("partners", words.listOf(onList)))));
        }
        List<Partner> known = partners.of(plant);
        String need = words.text("pairing." + pollination);
        String text = known.isEmpty()
                ? words.text("pairing.none", Map.of("need", need))
                : words.text(
                        "list.check.no-partner",
                        Map.of(
                                "need",
                                need,
                                "partners",
                                known.stream()
                                        .limit(PROPOSED)
                                        .map(partner -> partner.plant().name().toString())
                                        .collect(Collectors.joining(", "))));
        return Optional.of(remark(Kind.POLLINATION, true, line, text));
    }

    private void safety(Line line, PlantRecord plant, List<Remark> remarks) {
        plant.facts().value(Attributes.CAUTIONS).orElse(List.of()).stream()
                .map(caution -> remark(Kind.SAFETY, false, line, words.caution(caution)))
                .forEach(remarks::add);
    }

    private void shortage(ListSite site, Line line, PlantRecord plant, LocalDate today, List<Remark> remarks) {
        if (line.missing() == 0) {
            return;
        }
        YearWeek by = site.by().orElse(YearWeek.of(today));
        List<String> parts = new ArrayList<>();
        parts.add(words.text(
                "list.check.short",
                Map.of(
                        "free", words.count(line.free()),
                        "asked", words.count(line.line().quantity()),
                        "missing", words.count(line.missing()),
                        "week", words.week(by))));
        later(line, by).ifPresent(parts::add);
        otherSizes(line, by).ifPresent(parts::add);
        instead(site, line, plant, today).ifPresent(parts::add);
        remarks.add(remark(Kind.SHORTAGE, true, line, String.join(" ", parts)));
    }

    /// The week in which the rest is ready, when it ever is.
    private Optional<String> later(Line line, YearWeek by) {
        if (line.item().isEmpty()) {
            return Optional.empty();
        }
        ItemRecord item = line.item().get();
        return line.stock().lots().stream()
                .filter(lot -> lot.item().equals(item.key()))
                .flatMap(lot -> lot.ready().stream())
                .filter(week -> week.compareTo(by) > 0)
                .distinct()
                .sorted()
                .filter(week ->
                        line.stock().freeBy(item.key(), week) >= line.line().quantity())
                .findFirst()
                .map(week -> words.text("list.check.later", Map.of("week", words.week(week))));
    }

    private Optional<String> otherSizes(Line line, YearWeek by) {
        List<String> sizes = line.stock().items().stream()
                .filter(item -> line.item()
                        .map(chosen -> !chosen.key().equals(item.key()))
                        .orElse(true))
                .filter(item -> line.stock().freeBy(item.key(), by) > 0)
                .map(item -> words.text(
                        "list.check.size",
                        Map.of(
                                "count", words.count(line.stock().freeBy(item.key(), by)),
                                "size", words.size(item.size(), item.form()))))
                .toList();
        return sizes.isEmpty()
                ? Optional.empty()
                : Optional.of(words.text("list.check.sizes", Map.of("sizes", words.listOf(sizes))));
    }

    private Optional<String> instead(ListSite site, Line line, PlantRecord plant, LocalDate today) {
        List<WeighedWish> wishes = new ArrayList<>();
        site.zone().map(Wish.HardyIn::new).map(WeighedWish::of).ifPresent(wishes::add);
        site.light().map(Wish.GrowsIn::new).map(WeighedWish::of).ifPresent(wishes::add);
        site.soil().map(Wish.LikesSoil::new).map(WeighedWish::of).ifPresent(wishes::add);
        Demand demand = new Demand(line.missing(), line.line().size(), site.by(), true);
        List<Substitute> found = substitutes
                .find(new SubstituteQuery(
                        plant, Purpose.NOT_SAID, demand, shipment(site, today), wishes, YearWeek.of(today), PROPOSED))
                .best();
        List<String> names = found.stream()
                .map(one -> words.text(
                        "list.check.substitute",
                        Map.of(
                                "name", one.match().plant().name().toString(),
                                "count",
                                        words.count(one.offer()
                                                .map(Offer::delivered)
                                                .orElse(0)),
                                "size",
                                        one.offer()
                                                .map(offer -> words.size(
                                                        offer.item().size(),
                                                        offer.item().form()))
                                                .orElse(""))))
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(words.text("list.check.instead", Map.of("plants", String.join("; ", names))));
    }
}
