package org.benchleaf.render.page;

import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// The page that answers a need: what was read, each word of it removable, and the plants with their reasons.
/// Every `path` leads to the same page with something more or less asked.
///
/// @param sentence as it was typed
/// @param asked what was read, in the order said
/// @param remarks how doubtful words were taken, in sentences
/// @param others what doubtful words may mean as well
/// @param notUnderstood words that say nothing to the reader
/// @param names plants whose names are like those words, or like the whole sentence
/// @param tally how many plants answer; empty when nothing was read
/// @param found the plants of this page
/// @param why the plant that was asked about by name
/// @param offers what to give up or to loosen, and what it brings
/// @param narrowings what the answer can be narrowed by
/// @param earlier path to the page before, empty on the first
/// @param later path to the next page, empty on the last
/// @param shop whose catalog it is
public record NeedPage(
        String sentence,
        List<Asked> asked,
        List<String> remarks,
        List<Other> others,
        List<String> notUnderstood,
        List<Named> names,
        Optional<Tally> tally,
        List<Found> found,
        Optional<Found> why,
        List<Offer> offers,
        List<Narrowing> narrowings,
        String earlier,
        String later,
        Shop shop) {
    public NeedPage {
        asked = List.copyOf(asked);
        remarks = List.copyOf(remarks);
        others = List.copyOf(others);
        notUnderstood = List.copyOf(notUnderstood);
        names = List.copyOf(names);
        found = List.copyOf(found);
        offers = List.copyOf(offers);
        narrowings = List.copyOf(narrowings);
    }

    /// Words and the wish they were read as.
    ///
    /// @param words as typed; empty for what was chosen on the page
    /// @param without path to the answer without it
    public record Asked(String words, WeighedWish wish, String without) {}

    /// Another meaning of doubtful words.
    public record Other(String words, List<Wish> wishes) {
        public Other {
            wishes = List.copyOf(wishes);
        }
    }

    /// A plant found by its name.
    ///
    /// @param matched the name that was found, when it is not the plant's own
    /// @param path to the plant's page
    public record Named(BotanicalName name, String matched, String path) {}

    /// @param all plants that are known to meet every wish
    /// @param none plants that miss none but of which something asked is not known
    /// @param total plants that are ranked
    public record Tally(int all, int none, int total) {}

    /// One plant and how it answers.
    ///
    /// @param place its place in the ranking, 1 for the best; 0 when it has none
    /// @param common its common name, may be empty
    /// @param path to the plant's page
    /// @param reasons one a wish
    /// @param stock what can be had of it, now or later
    public record Found(
            int place, BotanicalName name, String common, String path, List<Reason> reasons, List<ItemLine> stock) {
        public Found {
            reasons = List.copyOf(reasons);
            stock = List.copyOf(stock);
        }
    }

    /// @param giveUp wishes to give up; empty when one is to be loosened
    /// @param loosened the wish before and after; empty when some are to be given up
    /// @param more plants that it brings
    /// @param path to the answer without the wish; empty when the page cannot ask that
    public record Offer(List<Wish> giveUp, List<Wish> loosened, int more, String path) {
        public Offer {
            giveUp = List.copyOf(giveUp);
            loosened = List.copyOf(loosened);
        }
    }

    /// @param heading what it is about, in words
    public record Narrowing(String heading, List<Choice> choices) {
        public Narrowing {
            choices = List.copyOf(choices);
        }
    }

    /// @param value in words
    /// @param plants so many miss nothing else and have it
    public record Choice(String value, int plants, String path) {}
}
