package org.benchleaf.app.web;

import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.content.Telling;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.page.Shop;

/// How pages tell the one who asks: strangers as the shop has decided, staff everything.
record PublicView(Benchleaf benchleaf) {
    Telling telling(Request request) {
        Telling strangers = benchleaf.settings().choices().telling();
        // asked only when it matters: an answer for somebody known is not kept by caches
        return strangers.equals(Telling.ALL) || request.identity().isPresent() ? Telling.ALL : strangers;
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
