package org.benchleaf.render.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.openpdf.text.pdf.PdfBoolean;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfIndirectReference;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumberTree;
import org.openpdf.text.pdf.PdfWriter;

/// Writes the structure of a PDF (ISO 32000-1, 14.7) part by part, as pages are done; what is kept in memory are two
/// numbers a page.
final class StructureTree {
    private final PdfWriter writer;
    private final PdfIndirectReference root;
    private final PdfIndirectReference document;
    private final List<PdfIndirectReference> parts = new ArrayList<>();
    private final Map<Integer, PdfIndirectReference> parents = new HashMap<>();
    private int nextKey;

    /// @param writer opened
    StructureTree(PdfWriter writer) {
        this.writer = writer;
        this.root = writer.getPdfIndirectReference();
        this.document = writer.getPdfIndirectReference();
        PdfDictionary marked = new PdfDictionary();
        marked.put(PdfName.MARKED, PdfBoolean.PDFTRUE);
        writer.getExtraCatalog().put(PdfName.MARKINFO, marked);
        writer.getExtraCatalog().put(PdfName.STRUCTTREEROOT, root);
    }

    /// A key of the parent tree for a page or a link.
    int newKey() {
        return nextKey++;
    }

    /// Gives the page in work a key; its entries are written when the page is done.
    int startPage() {
        int key = newKey();
        // the library has no way to add this entry to a page but behind the name of its tab order, and its own
        // structure tree, which can, keeps every element in memory until the end
        writer.setTabs(new PdfName(("/S/StructParents " + key).getBytes(StandardCharsets.US_ASCII)));
        return key;
    }

    /// Writes a part of the document that is painted.
    void write(TagNode part) {
        if (!part.isEmpty()) {
            parts.add(element(part, document.getNumber()));
        }
    }

    private PdfIndirectReference element(TagNode node, int parent) {
        PdfIndirectReference place = writer.getPdfIndirectReference();
        node.writtenAt(place);
        int page = pageOf(node);
        StringBuilder text = new StringBuilder(96)
                .append("<</S/")
                .append(node.role())
                .append("/P ")
                .append(parent)
                .append(" 0 R");
        if (page > 0) {
            text.append("/Pg ").append(page).append(" 0 R");
        }
        text.append(node.entries()).append("/K[");
        for (TagKid kid : node.kids()) {
            // an empty cell holds its column's place
            if (!kid.isEmpty() || kid instanceof TagNode inner && inner.isCell()) {
                write(kid, page, place.getNumber(), text);
            }
        }
        add(RawObject.dictionary(text.append("]>>").toString()), place);
        return place;
    }

    private void write(TagKid kid, int page, int parent, StringBuilder text) {
        switch (kid) {
            case TagNode node -> text.append(element(node, parent).getNumber()).append(" 0 R ");
            case TagRun run -> {
                for (TagRun.Mark mark : run.marks()) {
                    if (mark.page() == page) {
                        text.append(mark.id()).append(' ');
                    } else {
                        text.append("<</Type/MCR/Pg ")
                                .append(mark.page())
                                .append(" 0 R/MCID ")
                                .append(mark.id())
                                .append(">>");
                    }
                }
            }
            case TagLink link ->
                text.append("<</Type/OBJR/Pg ")
                        .append(link.page())
                        .append(" 0 R/Obj ")
                        .append(link.annotation())
                        .append(" 0 R>>");
        }
    }

    /// The page of the first content of its own, or 0.
    private static int pageOf(TagNode node) {
        for (TagKid kid : node.kids()) {
            if (kid instanceof TagRun run && !run.isEmpty()) {
                return run.marks().getFirst().page();
            }
        }
        return 0;
    }

    /// Says whose content a page shows, in the order of its marks.
    ///
    /// @param owners written already
    void page(int key, List<TagNode> owners) {
        StringBuilder text = new StringBuilder(owners.size() * 10 + 2).append('[');
        for (TagNode owner : owners) {
            text.append(place(owner).getNumber()).append(" 0 R ");
        }
        PdfIndirectReference place = writer.getPdfIndirectReference();
        add(RawObject.array(text.append(']').toString()), place);
        parents.put(key, place);
    }

    /// Says whose link a key stands for.
    ///
    /// @param owner written already
    void link(int key, TagNode owner) {
        parents.put(key, place(owner));
    }

    private static PdfIndirectReference place(TagNode owner) {
        return owner.reference().orElseThrow(() -> new IllegalStateException("content of an element nobody wrote"));
    }

    /// Writes the root; nothing may follow.
    void close() {
        StringBuilder kids = new StringBuilder(parts.size() * 10 + 64)
                .append("<</S/Document/P ")
                .append(root.getNumber())
                .append(" 0 R/K[");
        parts.forEach(part -> kids.append(part.getNumber()).append(" 0 R "));
        add(RawObject.dictionary(kids.append("]>>").toString()), document);
        PdfDictionary top = new PdfDictionary(PdfName.STRUCTTREEROOT);
        top.put(PdfName.K, document);
        try {
            PdfDictionary tree = PdfNumberTree.writeTree(parents, writer);
            if (tree != null) {
                top.put(PdfName.PARENTTREE, writer.addToBody(tree).getIndirectReference());
            }
            writer.addToBody(top, root);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private void add(RawObject object, PdfIndirectReference place) {
        try {
            writer.addToBody(object, place);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
