package org.benchleaf.render.page;

import java.util.List;

/// The page on which a bulletin is made.
///
/// @param shop whose
/// @param week `2026-W41`
/// @param weekText the same in words
/// @param version of the bulletin that was opened; 0 for a new one
/// @param greeting its first line
/// @param published whether everybody sees it already
/// @param choices chosen ones first, in their order
/// @param trouble why it was not saved, in words; may be empty
/// @param formToken proves that the form is ours
public record BulletinDesk(
        Shop shop,
        String week,
        String weekText,
        int version,
        String greeting,
        boolean published,
        List<Choice> choices,
        String trouble,
        String formToken) {
    public BulletinDesk {
        choices = List.copyOf(choices);
    }

    /// One sighting to choose.
    ///
    /// @param place in the bulletin, 1 for the lead; 0 when it is not in it
    /// @param reason as edited, or as proposed from the facts
    public record Choice(SeenLine seen, int place, String reason) {}
}
