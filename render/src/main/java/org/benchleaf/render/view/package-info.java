/// What templates see: page models put into words, measured and set in lines. Lengths are millimetres, type is
/// points.
@NullMarked
package org.benchleaf.render.view;

import org.jspecify.annotations.NullMarked;
