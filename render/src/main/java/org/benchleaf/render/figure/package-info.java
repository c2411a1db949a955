/// Figures of ours as small drawings: shapes and words with a text alternative, written as SVG for the web and as
/// vectors into PDF. Lengths are points (1/72 in) at natural size; y runs down.
@NullMarked
package org.benchleaf.render.figure;

import org.jspecify.annotations.NullMarked;
