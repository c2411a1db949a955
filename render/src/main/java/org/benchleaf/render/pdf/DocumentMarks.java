package org.benchleaf.render.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/// What a PDF says of itself: title, language, color space, standards, print at 100 %; and nothing that changes from
/// one print to the next, so no date, and an id made from the title.
final class DocumentMarks {
    private static final String PRODUCER = "Benchleaf";

    /// Of 0 to 9: the usual 6 makes a card a twelfth smaller and takes a sixth more of the whole print.
    private static final int COMPRESSION = 3;

    private final String title;
    private final String language;
    private Optional<PressMarks> press = Optional.empty();

    DocumentMarks(String title, String language) {
        this.title = title;
        this.language = language;
    }

    /// Says where every page is trimmed; before the first is written.
    void trimmed(PressMarks marks) {
        press = Optional.of(marks);
    }

    void beforeOpening(PdfWriter writer) {
        writer.setCompressionLevel(COMPRESSION);
        PdfDictionary info = writer.getInfo();
        info.remove(PdfName.CREATIONDATE);
        info.remove(PdfName.MODDATE);
        info.remove(PdfName.CREATOR);
        info.put(PdfName.PRODUCER, new PdfString(PRODUCER));
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
        press.ifPresent(marks -> {
            writer.setBoxSize("trim", marks.trim());
            writer.setBoxSize("bleed", marks.bleed());
        });
        writer.setXmpMetadata(XmpPacket.of(title, language, PRODUCER));
    }

    /// Colors are sRGB, and the file says so once.
    void onceOpen(PdfWriter writer) {
        if (writer.getExtraCatalog().contains(PdfName.OUTPUTINTENTS)) {
            return;
        }
        PdfStream profile = new PdfStream(SrgbProfile.bytes());
        profile.put(PdfName.N, new PdfNumber(3));
        profile.flateCompress();
        PdfDictionary intent = new PdfDictionary(PdfName.OUTPUTINTENT);
        // the library's own setter writes the kind of PDF/X
        intent.put(PdfName.S, new PdfName("GTS_PDFA1"));
        intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString("sRGB"));
        intent.put(PdfName.INFO, new PdfString("sRGB"));
        try {
            intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(profile).getIndirectReference());
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
    }

    /// The engine takes the title of the first page for that of the whole.
    void beforeClosing(PdfWriter writer) {
        writer.getInfo().put(PdfName.TITLE, new PdfString(title, PdfObject.TEXT_UNICODE));
    }
}
