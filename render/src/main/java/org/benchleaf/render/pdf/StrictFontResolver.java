package org.benchleaf.render.pdf;

import java.util.HashMap;
import java.util.Map;
import org.benchleaf.content.MissingContent;
import org.xhtmlrenderer.css.value.FontSpecification;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.pdf.FontDescription;
import org.xhtmlrenderer.pdf.FontFamily;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextFontResolver;
import org.xhtmlrenderer.render.FSFont;

/// Knows our faces and nothing else: a style sheet that asks for another family stops the print, where the engine
/// would quietly set it in a font that is not embedded.
final class StrictFontResolver extends ITextFontResolver {
    private final Map<String, FontDescription> faces = new HashMap<>();

    StrictFontResolver(FontShelf shelf) {
        for (Face face : Face.values()) {
            faces.put(face.family(), new FontDescription(shelf.font(face)));
        }
    }

    /// None: the engine would read the measures of fourteen fonts of its own for every print.
    @Override
    protected Map<String, FontFamily> loadFonts() {
        return new HashMap<>();
    }

    @Override
    public FSFont resolveFont(SharedContext context, FontSpecification specification) {
        for (String family : specification.families()) {
            FontDescription face = faces.get(family);
            if (face != null) {
                return new ITextFSFont(face, specification.size());
            }
        }
        throw new MissingContent(
                "font family " + String.join(", ", specification.families()), "the fonts of the content pack");
    }
}
