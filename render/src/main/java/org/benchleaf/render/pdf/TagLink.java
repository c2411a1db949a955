package org.benchleaf.render.pdf;

/// The place of a link on a page.
///
/// @param annotation number of its object
/// @param page number of the page's object
record TagLink(int annotation, int page) implements TagKid {
    @Override
    public boolean isEmpty() {
        return false;
    }
}
