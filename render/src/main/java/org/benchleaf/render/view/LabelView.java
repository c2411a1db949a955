package org.benchleaf.render.view;

import java.util.List;

/// One label in its place on the sheet; places and sizes in mm.
///
/// @param left of the cell
/// @param top of the cell
/// @param code key of its code
/// @param codeLeft and codeTop: place of the code within the cell, its side being codeSize
/// @param textLeft of the words within the cell
/// @param nameTop and the others: places within the cell
/// @param size in which it is sold; empty when not stated
/// @param place block and row
/// @param detail lot and price
/// @param bars one place for the bars of a till, when there are any
public record LabelView(
        double left,
        double top,
        double width,
        double height,
        String code,
        double codeLeft,
        double codeTop,
        double codeSize,
        double textLeft,
        double textWidth,
        double nameTop,
        TextBlock name,
        double commonTop,
        TextBlock common,
        double sizeTop,
        TextBlock size,
        double placeTop,
        TextBlock place,
        double detailTop,
        TextBlock detail,
        List<Bars> bars) {
    /// Where bars stand within the cell.
    ///
    /// @param key of their drawing
    public record Bars(String key, double left, double top, double width) {}
}
