package org.benchleaf.render.view;

import org.benchleaf.render.pdf.Face;

/// A word about to be set.
///
/// @param text without spaces
/// @param face it is set in
/// @param spaced whether a space stands before it, where a line may break
/// @param startsPart whether a new part of a name begins with it, where a line breaks best
record Word(String text, Face face, boolean spaced, boolean startsPart) {}
