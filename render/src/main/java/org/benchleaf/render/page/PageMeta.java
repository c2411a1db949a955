package org.benchleaf.render.page;

/// What a page tells besides its sheet, most of it to programs: searchers, and those that show a link with a picture.
///
/// @param address of the page, whole
/// @param image address of its picture, whole; empty when it has none
/// @param data what it is about as JSON-LD; empty when there is none
/// @param retired whether the plant is no longer grown
public record PageMeta(String address, String image, String data, boolean retired) {
    public static final PageMeta NONE = new PageMeta("", "", "", false);
}
