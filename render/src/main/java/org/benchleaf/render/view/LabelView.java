package org.benchleaf.render.view;

import java.util.List;
import org.benchleaf.render.pdf.BarsDrawing;
import org.benchleaf.render.pdf.CodeDrawing;

/// One label; places within its cell and sizes in mm.
///
/// @param code its code
/// @param codeLeft and codeTop: place of the code within the cell, its side being codeSize
/// @param nameLeft of the names within the cell
/// @param textLeft of the other words within the cell
/// @param nameTop and the others: places within the cell
/// @param size in which it is sold; empty when not stated
/// @param place block and row
/// @param detail lot and price
/// @param bars one place for the bars of a till, when there are any
public record LabelView(
        double width,
        double height,
        CodeDrawing code,
        double codeLeft,
        double codeTop,
        double codeSize,
        double nameLeft,
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
    public record Bars(BarsDrawing drawing, double left, double top, double width) {}
}
