package org.benchleaf.render;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;

/// The structure of a PDF as a reader for the blind walks it, one element a line: `H1 Itea virginica`.
final class Structure {
    private final List<String> lines = new ArrayList<>();
    private final Map<COSDictionary, Map<Integer, String>> words = new HashMap<>();
    private final List<String> ornament = new ArrayList<>();

    private Structure(PDDocument document) throws IOException {
        for (PDPage page : document.getPages()) {
            PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
            extractor.processPage(page);
            Map<Integer, String> ofPage = new HashMap<>();
            for (PDMarkedContent content : extractor.getMarkedContents()) {
                if ("Artifact".equals(content.getTag())) {
                    ornament.add(text(content));
                } else {
                    ofPage.put(content.getMCID(), text(content));
                }
            }
            words.put(page.getCOSObject(), ofPage);
        }
        walk(document.getDocumentCatalog().getStructureTreeRoot(), null);
    }

    static Structure of(Printed printed) throws IOException {
        return new Structure(printed.document());
    }

    /// Elements with words, in reading order.
    List<String> lines() {
        return lines;
    }

    /// Words of no element.
    List<String> ornament() {
        return ornament.stream().filter(words -> !words.isBlank()).toList();
    }

    private static String text(PDMarkedContent content) {
        StringBuilder text = new StringBuilder();
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition glyph) {
                text.append(glyph.getUnicode());
            } else if (part instanceof PDMarkedContent inner) {
                text.append(text(inner));
            }
        }
        return text.toString();
    }

    private void walk(PDStructureNode node, @Nullable PDPage page) {
        PDPage own = node instanceof PDStructureElement element && element.getPage() != null ? element.getPage() : page;
        StringBuilder line = new StringBuilder();
        if (node instanceof PDStructureElement element) {
            line.append(element.getStructureType());
            String scope = scope(element);
            line.append(scope);
            if (element.getAlternateDescription() != null) {
                line.append(" [").append(element.getAlternateDescription()).append(']');
            }
        }
        StringBuilder said = new StringBuilder();
        for (Object kid : node.getKids()) {
            switch (kid) {
                case Integer id -> said.append(wordsOf(own, id));
                case PDMarkedContentReference reference ->
                    said.append(wordsOf(reference.getPage() == null ? own : reference.getPage(), reference.getMCID()));
                case PDObjectReference link -> said.append(" (link)");
                default -> {}
            }
        }
        if (node instanceof PDStructureElement) {
            lines.add((line + " " + said).strip().replace('\u00A0', ' '));
        }
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement inner) {
                walk(inner, own);
            }
        }
    }

    private String wordsOf(@Nullable PDPage page, int id) {
        return page == null
                ? ""
                : words.getOrDefault(page.getCOSObject(), Map.of()).getOrDefault(id, "");
    }

    private static String scope(PDStructureElement element) {
        return element.getCOSObject().getDictionaryObject(COSName.A) instanceof COSDictionary table
                        && table.getNameAsString(COSName.getPDFName("Scope")) != null
                ? "/" + table.getNameAsString(COSName.getPDFName("Scope"))
                : "";
    }
}
