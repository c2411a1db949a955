package org.benchleaf.render.view;

import java.util.ArrayList;
import java.util.List;

/// Deals blocks of known height to pages, never parting a block. A heading goes along with the first block below it
/// and comes again at the top of each page on which its blocks go on.
final class Flow<T> {
    private final double page;
    private final List<List<T>> pages = new ArrayList<>();
    private double left;

    /// @param page height of a page
    /// @param first what is left of the first page
    Flow(double page, double first) {
        this.page = page;
        this.left = first;
        pages.add(new ArrayList<>());
    }

    /// Puts a block below the last one.
    void add(T block, double height) {
        if (height > left) {
            turn();
        }
        put(block, height);
    }

    /// Puts a block of a table below the last one.
    ///
    /// @param again the head of its table, for the top of a page where it goes on
    /// @param headHeight of that
    void add(T block, double height, T again, double headHeight) {
        if (height > left) {
            turn();
            put(again, headHeight);
        }
        put(block, height);
    }

    /// Puts a heading below the last block, on the next page when its first block would not fit under it.
    void head(T block, double height, double firstBelow) {
        if (height + firstBelow > left) {
            turn();
        }
        put(block, height);
    }

    /// Goes on with the next page; a page on which nothing stands yet is that already.
    void turn() {
        if (!pages.getLast().isEmpty()) {
            pages.add(new ArrayList<>());
            left = page;
        }
    }

    private void put(T block, double height) {
        pages.getLast().add(block);
        left -= height;
    }

    List<List<T>> pages() {
        return pages;
    }
}
