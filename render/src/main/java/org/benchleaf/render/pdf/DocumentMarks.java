package org.benchleaf.render.pdf;

import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.UUID;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/// What a PDF says of itself: title, language, print at 100 %; and nothing that changes from one print to the
/// next, so no date, and an id made from the title.
final class DocumentMarks extends DefaultPDFCreationListener {
    private final String title;
    private final String language;

    DocumentMarks(String title, String language) {
        this.title = title;
        this.language = language;
    }

    @Override
    public void preOpen(ITextRenderer renderer) {
        PdfWriter writer = Objects.requireNonNull(renderer.getWriter(), "a PDF about to be opened");
        PdfDictionary info = writer.getInfo();
        info.remove(PdfName.CREATIONDATE);
        info.remove(PdfName.MODDATE);
        info.put(PdfName.PRODUCER, new PdfString("Benchleaf"));
        info.put(PdfName.TITLE, new PdfString(title, PdfObject.TEXT_UNICODE));
        byte[] id = UUID.nameUUIDFromBytes(title.getBytes(StandardCharsets.UTF_8))
                .toString()
                .substring(0, 16)
                .getBytes(StandardCharsets.US_ASCII);
        PdfArray ids = new PdfArray(new PdfString(id).setHexWriting(true));
        ids.add(new PdfString(id).setHexWriting(true));
        info.put(PdfName.FILEID, ids);
        writer.addViewerPreference(PdfName.PRINTSCALING, PdfName.NONE);
        writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, org.openpdf.text.pdf.PdfBoolean.PDFTRUE);
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(language));
    }

    /// The engine takes the title of the first page for that of the whole.
    @Override
    public void onClose(ITextRenderer renderer) {
        PdfDictionary info = Objects.requireNonNull(renderer.getWriter(), "a PDF about to be closed")
                .getInfo();
        info.put(PdfName.TITLE, new PdfString(title, PdfObject.TEXT_UNICODE));
    }
}
