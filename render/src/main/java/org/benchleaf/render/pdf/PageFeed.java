package org.benchleaf.render.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.Iterator;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.benchleaf.render.PrintRefused;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/// Makes pages ready to be laid out: measures, fills and parses them. After the first few a second thread does it
/// ahead, while the first lays out and paints; the order stays.
final class PageFeed implements AutoCloseable {
    /// So many are made by the thread that asks; most prints have no more.
    private static final int ALONE = 4;

    private static final int AHEAD = 16;

    private final Iterator<PrintPage> pages;
    private final DocumentBuilder parser = parser();
    private @Nullable BlockingQueue<Step> queue;
    private @Nullable Thread maker;
    private int given;

    /// What comes next.
    sealed interface Step {
        /// A page.
        ///
        /// @param first the first of its versions
        record Ready(PrintPage page, Document first) implements Step {}

        /// A page that cannot be printed.
        record Refused(PrintRefused refusal) implements Step {}

        /// Something that ends the print.
        record Failed(Throwable failure) implements Step {}

        /// No more.
        record Done() implements Step {}
    }

    PageFeed(Iterator<PrintPage> pages) {
        this.pages = pages;
    }

    Step next() {
        if (given++ < ALONE) {
            return make(parser);
        }
        try {
            if (queue == null) {
                queue = new ArrayBlockingQueue<>(AHEAD);
                maker = Thread.ofPlatform().daemon().name("pages").start(this::makeAll);
            }
            return queue.take();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the print was stopped", stopped);
        }
    }

    private void makeAll() {
        DocumentBuilder own = parser();
        BlockingQueue<Step> ready = java.util.Objects.requireNonNull(queue);
        try {
            Step step;
            do {
                step = make(own);
                ready.put(step);
            } while (!(step instanceof Step.Done || step instanceof Step.Failed));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private Step make(DocumentBuilder builder) {
        try {
            if (!pages.hasNext()) {
                return new Step.Done();
            }
            PrintPage page = pages.next();
            return new Step.Ready(
                    page, parse(builder, page.versions().getFirst().get()));
        } catch (PrintRefused refusal) {
            return new Step.Refused(refusal);
        } catch (RuntimeException | Error failure) {
            return new Step.Failed(failure);
        }
    }

    /// Another version of a page, by the thread that lays out.
    Document parse(String xhtml) {
        return parse(parser, xhtml);
    }

    @Override
    public void close() {
        if (maker != null) {
            maker.interrupt();
        }
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
