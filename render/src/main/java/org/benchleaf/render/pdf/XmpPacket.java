package org.benchleaf.render.pdf;

import java.nio.charset.StandardCharsets;

/// What a PDF says of itself in XMP (ISO 16684-1): title, language, and that it keeps to PDF/UA-1 and PDF/A-2a. The
/// namespace of PDF/UA is described as an extension, as PDF/A asks for (ISO 19005-2, 6.6.2.3).
final class XmpPacket {
    private XmpPacket() {}

    static byte[] of(String title, String language, String producer) {
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
                <pdf:Producer>%s</pdf:Producer>
                <pdfuaid:part>1</pdfuaid:part>
                <pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>
                </rdf:Description>
                <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
                <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
                <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
                <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource"><pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType><pdfaProperty:category>internal</pdfaProperty:category><pdfaProperty:description>Part of ISO 14289</pdfaProperty:description></rdf:li></rdf:Seq></pdfaSchema:property>
                </rdf:li></rdf:Bag></pdfaExtension:schemas>
                </rdf:Description>
                </rdf:RDF></x:xmpmeta>
                <?xpacket end="w"?>""".formatted(escape(title), escape(language), escape(producer)).getBytes(StandardCharsets.UTF_8);
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
