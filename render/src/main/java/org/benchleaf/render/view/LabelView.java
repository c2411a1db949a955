package org.benchleaf.render.view;

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
        TextBlock detail) {}
