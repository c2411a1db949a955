package org.benchleaf.app.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Troubles;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;

/// Says in words what no page can answer: to people on a page, to programs as `{"status":…,"problem":…}`.
final class TroublePages implements Troubles {
    private final String shop;
    private final Wording wording;

    TroublePages(Benchleaf benchleaf) {
        this.shop = benchleaf.settings().shopName();
        this.wording = benchleaf.wording();
    }

    @Override
    public Reply of(Request request, int status, Optional<Problem> problem) {
        String text = problem.map(wording::problem).orElseGet(() -> text(request, status));
        if (request.wantsData()) {
            Map<String, Object> told = new LinkedHashMap<>();
            told.put("status", status);
            told.put("problem", text);
            return Json.reply(told).withStatus(status);
        }
        return Reply.page(MessagePage.of(shop, text, wording.text("web.home"))).withStatus(status);
    }

    private String text(Request request, int status) {
        return switch (status) {
            case 401 -> wording.text("web.sign-in-first");
            case 403 -> wording.text("web.not-for-you");
            case 404 -> wording.text("web.not-found", Map.of("path", request.path()));
            case 405 -> wording.text("web.read-only");
            case 411, 413 -> wording.text("web.too-long");
            default -> wording.text("web.our-fault");
        };
    }
}
