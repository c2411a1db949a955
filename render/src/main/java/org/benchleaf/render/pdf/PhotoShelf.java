package org.benchleaf.render.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.benchleaf.render.Photographs;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.picture.Logo;
import org.benchleaf.render.picture.Picture;
import org.benchleaf.render.picture.PictureReader;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.jspecify.annotations.Nullable;
import org.openpdf.text.BadElementException;
import org.openpdf.text.Image;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfTemplate;

/// The photographs of one document. Each is made ready once and stored in the file once, however many pages show it;
/// what is written is not kept, so that thousands of pages need no more memory than a few. One thread draws; another
/// may measure ahead of it.
public final class PhotoShelf {
    /// Made ready and held until it is written: as many as the pages that are measured ahead show, in bytes.
    private static final long HELD = 16 << 20;

    /// Coarser than this shows its pixels at reading distance; common practice, no source.
    private static final int LEAST_DPI = 200;

    /// In points: up to this a photograph has 300 dots to the inch as it is kept usually.
    private static final double USUAL_WIDTH = 125 * 72 / 25.4;

    private final Photographs photographs;
    private final Map<String, Double> aspects = new HashMap<>();
    private final Map<String, Stored> written = new HashMap<>();
    private final Map<String, Image> held = new LinkedHashMap<>();
    private long heldBytes;
    private final Map<Logo, Image> logos = new HashMap<>();

    public PhotoShelf(Photographs photographs) {
        this.photographs = photographs;
    }

    /// Width by height of a photograph.
    ///
    /// @param subject whom it shows, for messages
    /// @throws PrintRefused when there is no such file or it is no picture
    public synchronized double aspect(String file, String subject) {
        Double known = aspects.get(file);
        if (known == null) {
            image(file, subject);
            known = Objects.requireNonNull(aspects.get(file));
        }
        return known;
    }

    /// A photograph that fills a box; what reaches beyond is cut off on both sides alike.
    ///
    /// @param width of the box in points
    /// @param height of the box in points
    public Drawing fill(String file, String subject, double width, double height) {
        return new Filled(file, subject, width, height);
    }

    /// A shop's logo, stored in the file once.
    ///
    /// @param width in points
    public Drawing logo(Logo logo, double width) {
        return new LogoDrawing(logo, width, logos);
    }

    /// A photograph that lies in the file.
    ///
    /// @param form the whole of it, a dot to the point
    private record Stored(PdfTemplate form, double width, double height) {
        double aspect() {
            return width / height;
        }
    }

    private final class Filled implements Drawing {
        private final String file;
        private final String subject;
        private final double width;
        private final double height;

        Filled(String file, String subject, double width, double height) {
            this.file = file;
            this.subject = subject;
            this.width = width;
            this.height = height;
        }

        @Override
        public double width() {
            return width;
        }

        @Override
        public double height() {
            return height;
        }

        @Override
        public List<Problem> faults() {
            Image image = image(file, subject, longSide());
            double aspect = image.getWidth() / (double) image.getHeight();
            double inches = Math.max(width, height * aspect) / 72;
            long dpi = (long) Math.floor(image.getWidth() / inches);
            return dpi >= LEAST_DPI
                    ? List.of()
                    : List.of(Problem.of("print.photo-coarse", file)
                            .with("field", "photograph")
                            .with("dpi", Long.toString(dpi))
                            .with("least", Integer.toString(LEAST_DPI))
                            .with("pixels", Long.toString((long) Math.ceil(inches * LEAST_DPI))));
        }

        @Override
        public String markup(String id, String words) {
            return Markup.picture(
                    "image/jpeg",
                    Objects.requireNonNull(image(file, subject).getOriginalData(), "the file it was made of"),
                    width / height,
                    words);
        }

        /// On a sign it keeps more of its dots.
        private int longSide() {
            return Math.max(width, height) > USUAL_WIDTH ? PictureReader.LARGE_SIDE : PictureReader.LONG_SIDE;
        }

        /// Whom it shows.
        @Override
        public String alternative() {
            return subject;
        }

        @Override
        public void draw(PdfContentByte page, FontShelf shelf, double x, double top, double scale) {
            String key = key(file, longSide());
            Stored photo = written.get(key);
            if (photo == null) {
                photo = store(page);
                written.put(key, photo);
                forget(key);
            }
            double shownWidth = Math.max(width, height * photo.aspect()) * scale;
            double shown = shownWidth / photo.width();
            page.saveState();
            page.rectangle(
                    (float) x, (float) (top - height * scale), (float) (width * scale), (float) (height * scale));
            page.clip();
            page.newPath();
            page.addTemplate(
                    photo.form(),
                    (float) shown,
                    0,
                    0,
                    (float) shown,
                    (float) (x + (width * scale - shownWidth) / 2),
                    (float) (top - (height * scale + shownWidth / photo.aspect()) / 2));
            page.restoreState();
        }

        /// Whatever box shows it, it is one object of the file.
        private Stored store(PdfContentByte page) {
            Image image = image(file, subject, longSide());
            PdfTemplate form = page.createTemplate(image.getWidth(), image.getHeight());
            try {
                form.addImage(image, image.getWidth(), 0, 0, image.getHeight(), 0, 0);
                page.getPdfWriter().releaseTemplate(form);
            } catch (IOException | org.openpdf.text.DocumentException unwritable) {
                throw new IllegalStateException("a photograph cannot be written: " + file, unwritable);
            }
            return new Stored(form, image.getWidth(), image.getHeight());
        }
    }

    private static String key(String file, int longSide) {
        return file + "@" + longSide;
    }

    private Image image(String file, String subject) {
        return image(file, subject, PictureReader.LONG_SIDE);
    }

    private synchronized Image image(String file, String subject, int longSide) {
        String key = key(file, longSide);
        Image image = held.get(key);
        if (image == null) {
            image = read(file, subject, longSide);
            held.put(key, image);
            heldBytes += bytes(image);
            while (heldBytes > HELD && held.size() > 1) {
                heldBytes -= bytes(held.remove(held.keySet().iterator().next()));
            }
        }
        return image;
    }

    private synchronized void forget(String key) {
        heldBytes -= bytes(held.remove(key));
    }

    private static long bytes(@Nullable Image image) {
        return image == null || image.getOriginalData() == null ? 0 : image.getOriginalData().length;
    }

    private Image read(String file, String subject, int longSide) {
        byte[] bytes = photographs
                .find(file)
                .orElseThrow(() ->
                        refused(Problem.of("photograph.missing", file).with("folder", photographs.where()), subject));
        Reading<Picture> reading = PictureReader.read(bytes, file, longSide);
        return switch (reading) {
            case Reading.Read<Picture>(Picture picture) -> {
                aspects.put(file, picture.aspect());
                try {
                    yield Image.getInstance(picture.jpeg());
                } catch (BadElementException | IOException impossible) {
                    throw new IllegalStateException("a picture of our own making: " + file, impossible);
                }
            }
            case Reading.Refused<Picture>(Problem problem) -> throw refused(problem, subject);
        };
    }

    private static PrintRefused refused(Problem problem, String subject) {
        return new PrintRefused(problem.with("name", subject));
    }
}
