package org.benchleaf.render.pdf;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.net.URI;
import java.net.URL;
import java.net.URLConnection;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.MissingContent;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;
import org.xhtmlrenderer.resource.ImageResource;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/// Serves the keys of the content pack and nothing else: no file, no network. Anything missing stops the print, where
/// the engine would only log it.
final class StrictResources extends ITextUserAgent {
    private static final String DEFAULT_STYLE =
            url(XhtmlNamespaceHandler.class.getResource("/resources/css/XhtmlNamespaceHandler.css"));

    private final ContentPack content;
    private final List<MissingContent> missed = new ArrayList<>();

    StrictResources(ITextOutputDevice device, int dotsPerPixel, ContentPack content) {
        super(device, dotsPerPixel);
        this.content = content;
    }

    private static String url(@org.jspecify.annotations.Nullable URL url) {
        return Objects.requireNonNull(url, "the engine's own style sheet").toString();
    }

    @Override
    public String resolveURI(@org.jspecify.annotations.Nullable String uri) {
        return uri == null ? "" : uri;
    }

    @Override
    public void setBaseURL(@org.jspecify.annotations.Nullable String url) {}

    @Override
    public String getBaseURL() {
        return "";
    }

    @Override
    protected InputStream openStream(String uri) throws java.io.IOException {
        if (DEFAULT_STYLE.equals(uri)) {
            return URI.create(uri).toURL().openStream();
        }
        return content.find(uri)
                .<InputStream>map(ByteArrayInputStream::new)
                .orElseThrow(() -> missed(uri, "the content pack, and nothing else is read"));
    }

    @Override
    protected URLConnection openConnection(String uri) {
        throw missed(uri, "the content pack, and nothing else is read");
    }

    @Override
    public ImageResource getImageResource(String uri) {
        throw missed("picture " + uri, "the figures of the page, and nothing else is drawn");
    }

    /// The engine swallows some exceptions, so each miss is also kept for [#stopIfMissed].
    private MissingContent missed(String key, String where) {
        MissingContent miss = new MissingContent(key, where);
        missed.add(miss);
        return miss;
    }

    /// @throws MissingContent when anything was missing so far
    void stopIfMissed() {
        if (!missed.isEmpty()) {
            throw missed.getFirst();
        }
    }
}
