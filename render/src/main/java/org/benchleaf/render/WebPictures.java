package org.benchleaf.render;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.render.picture.Picture;
import org.benchleaf.render.picture.PictureReader;

/// Photographs for pages, the last shown kept ready. A page goes without one that is missing or broken: it must open
/// all the same.
final class WebPictures {
    /// At about 300 kB each.
    private static final int KEPT = 64;

    private final Photographs photographs;
    private final Map<String, Kept> kept = new LinkedHashMap<>(KEPT, 0.75f, true);

    WebPictures(Photographs photographs) {
        this.photographs = photographs;
    }

    /// One at a time: making a large photograph ready takes memory that a crowd of askers must not multiply.
    synchronized Optional<Picture> find(String file) {
        Optional<Photographs.Stamp> stamp = photographs.stamp(file);
        if (stamp.isEmpty()) {
            kept.remove(file);
            return Optional.empty();
        }
        Kept known = kept.get(file);
        if (known == null || !known.stamp().equals(stamp.get())) {
            known = new Kept(
                    stamp.get(),
                    photographs
                            .find(file)
                            .flatMap(bytes -> PictureReader.read(bytes, file).toOptional()));
            kept.put(file, known);
            if (kept.size() > KEPT) {
                kept.remove(kept.keySet().iterator().next());
            }
        }
        return known.picture();
    }

    private record Kept(Photographs.Stamp stamp, Optional<Picture> picture) {}
}
