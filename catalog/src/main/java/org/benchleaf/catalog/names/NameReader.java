package org.benchleaf.catalog.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.name.BotanicalName;

/// Reads a plant's name from text: the order of steps. Pure, never throws, and the time it takes grows with the
/// length of the text and no faster.
///
/// What it cannot know, it does not guess in silence: whether `Acer rubrum October Glory` is a cultivar is told in a
/// note, whether a plant of that name exists is asked elsewhere.
public final class NameReader {
    /// The longest name of USDA PLANTS with authors and parents has 127 characters; much longer text is no name.
    private static final int LONGEST = 400;

    private NameReader() {}

    /// Reads a name.
    public static NameReading read(String text) {
        return read(text, Optional.empty());
    }

    /// Reads a name whose genus may be shortened to its capital, `H. canariensis`, because it was named just before.
    ///
    /// @param before the name before it in the list
    public static NameReading readAfter(BotanicalName before, String text) {
        return read(text, Optional.of(before));
    }

    private static NameReading read(String text, Optional<BotanicalName> before) {
        if (text.length() > LONGEST) {
            return new NameReading.Unread(
                    Problem.of("name.long", text.substring(0, 80) + "…").with("longest", Integer.toString(LONGEST)));
        }
        if (text.isBlank()) {
            return new NameReading.Unread(Problem.of("name.empty", text));
        }
        List<NameNote> notes = new ArrayList<>();
        GoodsWords parted = GoodsWords.of(text);
        List<Token> tokens = Tokens.of(parted.name(), notes);
        if (!parted.goods().isEmpty()) {
            notes.add(new NameNote(NameNote.Kind.GOODS, parted.goods()));
        }
        return new NameWalk(parted.name(), tokens, notes, before).read();
    }
}
