package org.benchleaf.render.pdf;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/// Reads the structure of a page from its XHTML: headings, paragraphs, lists, tables, figures, links, in the order in
/// which they are written. A block that holds only words is a paragraph; a block of blocks is nothing of its own.
///
/// What HTML and ARIA mean by it is meant here too: `role="presentation"` makes a table mere layout,
/// `role="contentinfo"` is read last, `aria-hidden="true"` is ornament, `alt` speaks for a figure. A `div` of class
/// `line` is a line that was broken beforehand, not a paragraph.
final class ReadingOrder {
    private static final Set<String> INLINE = Set.of(
            "span", "a", "b", "i", "em", "strong", "small", "sub", "sup", "br", "img", "abbr", "cite", "q", "time");
    private static final Set<String> PLAIN = Set.of("H1", "H2", "H3", "H4", "H5", "H6", "P", "Caption", "Link", "Span");

    private final TagNode part = new TagNode("Sect");
    private final Map<Node, TagRun> runs = new IdentityHashMap<>();
    private final Map<Element, TagNode> links = new IdentityHashMap<>();
    private final Function<Element, String> alternatives;

    /// @param alternatives what speaks for an `img` without an `alt` of its own; empty for ornament
    ReadingOrder(Document page, Function<Element, String> alternatives) {
        this.alternatives = alternatives;
        Element body = (Element) page.getElementsByTagName("body").item(0);
        if (body != null) {
            List<Element> last = new ArrayList<>();
            new Container(part).children(body, last);
            last.forEach(element -> new Container(part).children(element, new ArrayList<>()));
        }
    }

    /// The whole.
    TagNode part() {
        return part;
    }

    /// Where a text or figure belongs; empty for ornament.
    Optional<TagRun> runOf(@Nullable Node node) {
        return node == null ? Optional.empty() : Optional.ofNullable(runs.get(node));
    }

    /// The link that an `a` is.
    Optional<TagNode> linkOf(@Nullable Element element) {
        return element == null ? Optional.empty() : Optional.ofNullable(links.get(element));
    }

    private static boolean isHidden(Element element) {
        return element.getAttribute("aria-hidden").equals("true");
    }

    private static boolean isInline(Element element) {
        return INLINE.contains(element.getNodeName())
                || element.getNodeName().equals("div")
                        && element.getAttribute("class").equals("line");
    }

    private static boolean holdsBlocks(Element element) {
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child
                    && (!isInline(child)
                            || child.getNodeName().equals("img")
                            || !child.getNodeName().equals("a") && holdsBlocks(child))) {
                return true;
            }
        }
        return false;
    }

    /// Takes blocks; words between them become paragraphs.
    private final class Container {
        private final TagNode node;
        private @Nullable TagNode paragraph;

        Container(TagNode node) {
            this.node = node;
        }

        void children(Element parent, List<Element> last) {
            for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Text text) {
                    if (paragraph != null || !text.getData().isBlank()) {
                        runs.put(text, paragraph().run());
                    }
                } else if (child instanceof Element element && !isHidden(element)) {
                    if (element.getAttribute("role").equals("contentinfo")) {
                        last.add(element);
                    } else {
                        child(element, last);
                    }
                }
            }
        }

        private void child(Element element, List<Element> last) {
            String name = element.getNodeName();
            if (name.equals("img")) {
                figure(element, node);
                paragraph = null;
            } else if (name.equals("a") || isInline(element) && !holdsBlocks(element)) {
                words(element, paragraph());
            } else {
                paragraph = null;
                block(element, name, last);
                paragraph = null;
            }
        }

        private void block(Element element, String name, List<Element> last) {
            boolean layout = element.getAttribute("role").equals("presentation");
            switch (name) {
                case "h1", "h2", "h3", "h4", "h5", "h6" ->
                    words(element, node.add(tagged(element, "H" + name.charAt(1))));
                case "table" -> {
                    if (layout) {
                        new Layout(node).children(element, last);
                    } else {
                        new Container(node.add(tagged(element, "Table"))).children(element, last);
                    }
                }
                case "thead", "tbody", "tfoot" ->
                    new Container(node.add(tagged(
                                    element,
                                    name.equals("thead") ? "THead" : name.equals("tfoot") ? "TFoot" : "TBody")))
                            .children(element, last);
                case "tr" -> new Container(node.add(tagged(element, "TR"))).children(element, last);
                case "th", "td" -> cell(element, name, last);
                case "p" -> words(element, node.add(tagged(element, "P")));
                case "caption" -> words(element, node.add(tagged(element, "Caption")));
                case "ul", "ol" -> new Container(node.add(tagged(element, "L"))).children(element, last);
                case "li" -> mixed(element, node.add(tagged(element, "LI")).add(new TagNode("LBody")), last);
                default -> {
                    if (holdsBlocks(element)) {
                        children(element, last);
                    } else {
                        words(element, node.add(tagged(element, "P")));
                    }
                }
            }
        }

        private void cell(Element element, String name, List<Element> last) {
            TagNode cell = node.add(tagged(element, name.equals("th") ? "TH" : "TD"));
            StringBuilder table = new StringBuilder();
            if (name.equals("th")) {
                table.append("/Scope/").append(scope(element));
            }
            span(element, "colspan", "/ColSpan ", table);
            span(element, "rowspan", "/RowSpan ", table);
            if (!table.isEmpty()) {
                cell.entry("/A<</O/Table" + table + ">>");
            }
            mixed(element, cell, last);
        }

        private TagNode paragraph() {
            if (paragraph == null) {
                paragraph = PLAIN.contains(node.role()) ? node : node.add(new TagNode("P"));
            }
            return paragraph;
        }
    }

    /// Rows and cells that only lay out: what they hold stands where the table stands.
    private final class Layout {
        private final TagNode node;

        Layout(TagNode node) {
            this.node = node;
        }

        void children(Element parent, List<Element> last) {
            for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Element element && !isHidden(element)) {
                    switch (element.getNodeName()) {
                        case "tbody", "thead", "tfoot", "tr" -> children(element, last);
                        default -> new Container(node).children(element, last);
                    }
                }
            }
        }
    }

    /// A cell or list item: words of its own, or blocks.
    private void mixed(Element element, TagNode node, List<Element> last) {
        if (holdsBlocks(element)) {
            new Container(node).children(element, last);
        } else {
            words(element, node);
        }
    }

    /// Words of one paragraph.
    private void words(Element element, TagNode node) {
        String name = element.getNodeName();
        TagNode target = node;
        if (name.equals("a") && PdfLinks.isAllowed(element.getAttribute("href"))) {
            target = node.add(new TagNode("Link"));
            links.put(element, target);
        } else if (isInline(element) && !element.getAttribute("lang").isEmpty()) {
            target = node.add(tagged(element, "Span"));
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Text text) {
                runs.put(text, target.run());
            } else if (child instanceof Element inner && !isHidden(inner)) {
                if (inner.getNodeName().equals("img")) {
                    figure(inner, target);
                } else {
                    words(inner, target);
                }
            }
        }
    }

    private void figure(Element image, TagNode parent) {
        String alternative =
                image.getAttribute("alt").isBlank() ? alternatives.apply(image) : image.getAttribute("alt");
        if (!alternative.isBlank()) {
            TagNode figure = parent.add(new TagNode("Figure"));
            figure.entry("/Alt" + RawObject.text(alternative));
            runs.put(image, figure.run());
        }
    }

    private static TagNode tagged(Element element, String role) {
        TagNode node = new TagNode(role);
        String language = element.getAttribute("lang");
        if (!language.isEmpty()) {
            node.entry("/Lang" + RawObject.text(language));
        }
        return node;
    }

    private static void span(Element element, String attribute, String entry, StringBuilder table) {
        String value = element.getAttribute(attribute);
        if (value.matches("[1-9][0-9]{0,2}") && !value.equals("1")) {
            table.append(entry).append(value);
        }
    }

    /// What a head cell is the head of: as written, else its row when the row holds plain cells as well.
    private static String scope(Element head) {
        return switch (head.getAttribute("scope")) {
            case "col", "colgroup" -> "Column";
            case "row", "rowgroup" -> "Row";
            default -> hasPlainCell(head.getParentNode()) ? "Row" : "Column";
        };
    }

    private static boolean hasPlainCell(@Nullable Node row) {
        for (Node cell = row == null ? null : row.getFirstChild(); cell != null; cell = cell.getNextSibling()) {
            if (cell.getNodeName().equals("td")) {
                return true;
            }
        }
        return false;
    }
}
