package org.benchleaf.render.page;

import java.util.List;

/// What stands around every page of staff.
///
/// @param shop its name
/// @param title of the page
/// @param who is signed in; empty for nobody
/// @param formToken what forms of this page send back
/// @param ways to other pages
/// @param done what the last change did, one line; may be empty
/// @param trouble why it was not done, one line; may be empty
/// @param scripts addresses of scripts that help and are not needed
public record DeskFrame(
        String shop,
        String title,
        String who,
        String formToken,
        List<Way> ways,
        String done,
        String trouble,
        List<String> scripts) {
    public DeskFrame {
        ways = List.copyOf(ways);
        scripts = List.copyOf(scripts);
    }

    /// @param here whether it is this page, or the group that this page belongs to
    public record Way(String path, String label, boolean here) {}
}
