package org.benchleaf.render;

import java.util.concurrent.ConcurrentLinkedQueue;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.pdf.FontShelf;

/// Lends parsed fonts to one print at a time; there are never more shelves than prints that ran at once.
final class ShelfPool {
    private final ContentPack content;
    private final ConcurrentLinkedQueue<FontShelf> idle = new ConcurrentLinkedQueue<>();

    ShelfPool(ContentPack content) {
        this.content = content;
    }

    FontShelf borrow() {
        FontShelf shelf = idle.poll();
        return shelf == null ? new FontShelf(content) : shelf;
    }

    void giveBack(FontShelf shelf) {
        idle.add(shelf);
    }
}
