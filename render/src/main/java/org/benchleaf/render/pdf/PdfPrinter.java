package org.benchleaf.render.pdf;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.util.Iterator;
import java.util.Objects;
import java.util.function.Supplier;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.shared.Problem;
import org.openpdf.text.pdf.PdfWriter;
import org.w3c.dom.Document;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xhtmlrenderer.render.BlockBox;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/// Prints pages one after another into one PDF 1.7: each page is a document of its own, appended, so that memory and
/// time grow with the number of pages and no faster.
public final class PdfPrinter {
    private static final int DOTS_PER_PIXEL = 20;

    private final ContentPack content;
    private final FontShelf shelf;

    public PdfPrinter(ContentPack content, FontShelf shelf) {
        this.content = content;
        this.shelf = shelf;
    }

    /// @param pages at least one; taken one at a time
    /// @param title of the document
    /// @param language of the document, such as `en`
    /// @param out left open
    /// @return pages written
    /// @throws PrintRefused when there is no page, or one does not fit
    /// @throws org.benchleaf.content.MissingContent when a page asks for a file, font or picture that is not there
    public int print(Iterator<PrintPage> pages, String title, String language, OutputStream out) {
        if (!pages.hasNext()) {
            throw new PrintRefused(Problem.of("print.nothing", ""));
        }
        ITextOutputDevice device = new ITextOutputDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT);
        VectorElements vectors = new VectorElements(device, shelf);
        StrictResources resources = new StrictResources(device, DOTS_PER_PIXEL, content);
        ITextRenderer renderer = new ITextRenderer(
                ITextRenderer.DEFAULT_DOTS_PER_POINT,
                DOTS_PER_PIXEL,
                device,
                resources,
                new StrictFontResolver(shelf),
                vectors,
                new ITextTextRenderer());
        renderer.setPDFVersion(String.valueOf(PdfWriter.VERSION_1_7));
        renderer.setListener(new DocumentMarks(title, language));
        DocumentBuilder parser = parser();
        int count = 0;
        while (pages.hasNext()) {
            layOut(renderer, vectors, parser, pages.next());
            resources.stopIfMissed();
            if (count == 0) {
                renderer.createPDF(new KeptOpen(out), false);
            } else {
                renderer.writeNextDocument(count + 1);
            }
            resources.stopIfMissed();
            count++;
        }
        renderer.finishPDF();
        return count;
    }

    private static void layOut(ITextRenderer renderer, VectorElements vectors, DocumentBuilder parser, PrintPage page) {
        vectors.show(page.drawings());
        for (Supplier<String> version : page.versions()) {
            renderer.setDocument(parse(parser, version.get()), "");
            renderer.layout();
            if (pageCount(renderer) == 1) {
                return;
            }
        }
        throw new PrintRefused(Problem.of("print.page-overflow", page.name()).with("name", page.name()));
    }

    private static int pageCount(ITextRenderer renderer) {
        BlockBox root = Objects.requireNonNull(renderer.getRootBox(), "a page that is laid out");
        return Objects.requireNonNull(root.getLayer(), "a page that is laid out")
                .getPages()
                .size();
    }

    /// A parser that refuses any DOCTYPE, and with it every entity of a page's own.
    private static DocumentBuilder parser() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setXIncludeAware(false);
            DocumentBuilder parser = factory.newDocumentBuilder();
            parser.setErrorHandler(null);
            return parser;
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Document parse(DocumentBuilder parser, String xhtml) {
        try {
            return parser.parse(new InputSource(new StringReader(xhtml)));
        } catch (SAXException | IOException broken) {
            throw new IllegalStateException("a template made broken XHTML: " + broken.getMessage(), broken);
        }
    }

    /// Passes everything on but the closing.
    private static final class KeptOpen extends FilterOutputStream {
        KeptOpen(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
