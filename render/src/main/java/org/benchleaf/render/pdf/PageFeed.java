package org.benchleaf.render.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.Iterator;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/// Makes pages ready to be laid out: fills and parses them, after the first few by a thread of its own.
final class PageFeed implements Iterator<PageFeed.Ready>, AutoCloseable {
    private final InOrder<PrintPage, Ready> pages;
    private final DocumentBuilder parser = parser();

    /// A page about to be laid out.
    ///
    /// @param first the first of its versions
    record Ready(PrintPage page, Document first) {}

    PageFeed(Iterator<PrintPage> pages) {
        this.pages = new InOrder<>(
                pages,
                () -> {
                    DocumentBuilder own = parser();
                    return page -> new Ready(
                            page, parse(own, page.versions().getFirst().get()));
                },
                1);
    }

    @Override
    public boolean hasNext() {
        return pages.hasNext();
    }

    @Override
    public Ready next() {
        return pages.next();
    }

    /// Another version of a page, by the thread that lays out.
    Document parse(String xhtml) {
        return parse(parser, xhtml);
    }

    @Override
    public void close() {
        pages.close();
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
}
