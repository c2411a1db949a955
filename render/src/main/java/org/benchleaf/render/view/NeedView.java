package org.benchleaf.render.view;

import java.util.List;

/// The page that answers a need, in words; names as in [org.benchleaf.render.page.NeedPage].
///
/// @param tally the counts in a sentence; empty when nothing was read
public record NeedView(
        List<Asked> asked,
        List<String> remarks,
        List<Named> names,
        String tally,
        List<Found> found,
        List<Found> why,
        List<Offer> offers,
        List<org.benchleaf.render.page.NeedPage.Narrowing> narrowings) {
    public NeedView {
        asked = List.copyOf(asked);
        remarks = List.copyOf(remarks);
        names = List.copyOf(names);
        found = List.copyOf(found);
        why = List.copyOf(why);
        offers = List.copyOf(offers);
        narrowings = List.copyOf(narrowings);
    }

    /// @param remove what its button says to those who do not see the sign on it
    public record Asked(String words, String wish, String without, String remove) {}

    /// @param matched the name that was found, may be empty
    public record Named(TextLine name, String matched, String path) {}

    /// @param place may be empty
    /// @param stock what can be had, in a line; `here` when some of it can be had today
    public record Found(
            String place, TextLine name, String common, String path, List<Line> reasons, String stock, boolean here) {
        public Found {
            reasons = List.copyOf(reasons);
        }
    }

    /// @param kind `met`, `missed` or `unknown`
    /// @param sign read aloud before the text
    public record Line(String kind, String sign, String text) {}

    /// @param path may be empty
    public record Offer(String text, String path) {}
}
