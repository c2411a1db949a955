/// Photographs made fit to be shown: checked before they are decoded, turned upright, made smaller, and freed of what
/// the camera wrote into them.
@NullMarked
package org.benchleaf.render.picture;

import org.jspecify.annotations.NullMarked;
