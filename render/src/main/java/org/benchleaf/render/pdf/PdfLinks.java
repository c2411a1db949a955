package org.benchleaf.render.pdf;

import org.w3c.dom.Element;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/// Keeps links from the engine, which would copy any address and turn `onclick` into a script; the tagging device makes
/// them itself, for addresses of the web and of mail only.
final class PdfLinks extends XhtmlNamespaceHandler {
    static boolean isAllowed(String address) {
        return address.regionMatches(true, 0, "https://", 0, 8)
                || address.regionMatches(true, 0, "http://", 0, 7)
                || address.regionMatches(true, 0, "mailto:", 0, 7);
    }

    @Override
    public @org.jspecify.annotations.Nullable String getLinkUri(Element element) {
        return null;
    }
}
