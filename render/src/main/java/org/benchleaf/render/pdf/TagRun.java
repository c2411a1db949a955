package org.benchleaf.render.pdf;

import java.util.ArrayList;
import java.util.List;

/// Content that is read in one go: text between two elements, or a figure.
final class TagRun implements TagKid {
    /// @param page number of the page's object
    /// @param id of the marked content on that page
    record Mark(int page, int id) {}

    private final TagNode owner;
    private final List<Mark> marks = new ArrayList<>(2);

    TagRun(TagNode owner) {
        this.owner = owner;
    }

    TagNode owner() {
        return owner;
    }

    List<Mark> marks() {
        return marks;
    }

    @Override
    public boolean isEmpty() {
        return marks.isEmpty();
    }
}
