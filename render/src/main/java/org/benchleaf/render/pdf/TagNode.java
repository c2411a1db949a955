package org.benchleaf.render.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.openpdf.text.pdf.PdfIndirectReference;

/// One element of a page's structure in the making: what kind of text it is, and what it holds in reading order.
final class TagNode implements TagKid {
    private final String role;
    private final List<TagKid> kids = new ArrayList<>(4);
    private String entries = "";
    private @Nullable PdfIndirectReference reference;

    /// @param role a standard structure type, such as `P` (ISO 32000-1, 14.8.4)
    TagNode(String role) {
        this.role = role;
    }

    String role() {
        return role;
    }

    boolean isCell() {
        return role.equals("TD") || role.equals("TH");
    }

    /// Adds entries, already written as PDF.
    void entry(String written) {
        entries += written;
    }

    String entries() {
        return entries;
    }

    List<TagKid> kids() {
        return kids;
    }

    <T extends TagKid> T add(T kid) {
        kids.add(kid);
        return kid;
    }

    /// The run of text at the end, or a new one.
    TagRun run() {
        return !kids.isEmpty() && kids.getLast() instanceof TagRun run ? run : add(new TagRun(this));
    }

    @Override
    public boolean isEmpty() {
        for (TagKid kid : kids) {
            if (!kid.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /// Where it was written; empty until then.
    Optional<PdfIndirectReference> reference() {
        return Optional.ofNullable(reference);
    }

    void writtenAt(PdfIndirectReference place) {
        reference = place;
    }
}
