package org.benchleaf.render.picture;

/// A photograph fit to be shown: an upright RGB JPEG without any of the camera's notes, such as the place.
///
/// @param jpeg the file; not to be changed
/// @param width in pixels
/// @param height in pixels
@SuppressWarnings("ArrayRecordComponent") // a carrier of bytes, never compared
public record Picture(byte[] jpeg, int width, int height) {
    /// Width by height.
    public double aspect() {
        return width / (double) height;
    }
}
