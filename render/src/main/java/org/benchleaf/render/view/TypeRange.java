package org.benchleaf.render.view;

/// The sizes a text may be set in, in points, tried from large to small: first on one line, then on more, up to the
/// most lines.
///
/// @param largest wished for
/// @param leastWhileFewer smaller than this it is rather broken into one line more
/// @param least never smaller
/// @param lines at most
/// @param leading as a share of the size
record TypeRange(double largest, double leastWhileFewer, double least, int lines, double leading) {}
