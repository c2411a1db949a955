package org.benchleaf.render.view;

/// A place on a card, in mm from its upper left corner.
record CardBox(double left, double top, double width, double height) {
    double bottom() {
        return top + height;
    }
}
