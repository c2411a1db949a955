package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.Backups;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.LengthStyle;

/// Tells of a copied workspace.
final class CopyText {
    private CopyText() {}

    /// @param done the key of the sentence that says what was done
    /// @return the exit code: findings when something is amiss in the copy
    static int report(Backups.Copy copy, String done, boolean json, Console console) {
        Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL);
        if (json) {
            ObjectNode root = Json.object();
            root.put("folder", copy.folder().toString());
            root.put("revision", copy.revision().number());
            root.put("plants", copy.plants());
            root.put("lots", copy.lots());
            root.put("files", copy.files());
            ArrayNode problems = root.putArray("problems");
            copy.problems().forEach(problem -> problems.add(words.problem(problem)));
            console.out().println(Json.text(root));
        } else {
            console.out()
                    .println(words.text(
                            done,
                            Map.of(
                                    "folder", copy.folder().toString(),
                                    "revision", Long.toString(copy.revision().number()),
                                    "plants", words.count(copy.plants()),
                                    "lots", words.count(copy.lots()),
                                    "files", words.count(copy.files()))));
            copy.problems().forEach(problem -> console.out().println(words.problem(problem)));
        }
        return copy.problems().isEmpty() ? ErrorReport.DONE : ErrorReport.FINDINGS;
    }
}
