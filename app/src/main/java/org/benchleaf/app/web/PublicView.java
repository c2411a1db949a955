package org.benchleaf.app.web;

import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Choices;
import org.benchleaf.app.web.route.Identity;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.catalog.accounts.StaffMember;
import org.benchleaf.content.Telling;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.page.Shop;

/// How pages tell the one who asks: strangers as the shop has decided, staff everything, customers everything at their
/// prices.
record PublicView(Benchleaf benchleaf) {
    Telling telling(Request request) {
        Choices choices = benchleaf.settings().choices();
        // asked only when it matters: an answer for somebody known is not kept by caches
        boolean alike = choices.telling().equals(Telling.ALL) && choices.tiers().isEmpty();
        return alike ? Telling.ALL : request.identity().map(this::telling).orElse(choices.telling());
    }

    private Telling telling(Identity who) {
        return who.may(Right.LOOK)
                ? Telling.ALL
                : benchleaf
                        .accounts()
                        .find(who.name())
                        .flatMap(StaffMember::tier)
                        .map(this::telling)
                        .orElse(Telling.ALL);
    }

    /// A tier that the shop has given up tells no price rather than a wrong one.
    private Telling telling(String tier) {
        return benchleaf.settings().choices().tiers().stream()
                .filter(one -> one.name().equals(tier))
                .findFirst()
                .map(one -> Telling.at(Optional.of(one)))
                .orElse(new Telling(Telling.Counts.EXACT, false, Optional.empty()));
    }

    PrintStyle style(Request request) {
        return benchleaf.style().telling(telling(request));
    }

    Shop shop() {
        return new Shop(
                benchleaf.settings().shopName(),
                benchleaf.settings().shopLine(),
                benchleaf.logo().logoIfThere());
    }

    /// A path as the whole address by which people reach it.
    String address(String path) {
        String base = benchleaf.settings().base().toString();
        return (base.endsWith("/") ? base.substring(0, base.length() - 1) : base) + path;
    }
}
