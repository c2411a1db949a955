package org.benchleaf.render.picture;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/// How a camera was held: tag 274 of the Exif notes of a JPEG (CIPA DC-008, Exif 2.32, 4.6.4: values 1 to 8).
///
/// @param value 1 upright; 2 to 8 turned or mirrored
record Orientation(int value) {
    private static final int TAG = 274;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

    /// Reads it; a file without, or with notes that are damaged, counts as upright.
    static Orientation of(byte[] file) {
        try {
            return new Orientation(read(ByteBuffer.wrap(file)));
        } catch (IndexOutOfBoundsException | java.nio.BufferUnderflowException damaged) {
            return new Orientation(1);
        }
    }

    private static int read(ByteBuffer file) {
        if (file.limit() < 4 || file.getShort(0) != (short) 0xFFD8) {
            return 1;
        }
        int at = 2;
        // segments: marker, length, data; pictures begin with FFDA
        while (at + 4 <= file.limit() && (file.get(at) & 0xFF) == 0xFF && (file.get(at + 1) & 0xFF) != 0xDA) {
            int marker = file.get(at + 1) & 0xFF;
            int length = file.getShort(at + 2) & 0xFFFF;
            byte[] head = new byte[EXIF.length];
            if (marker == 0xE1 && length > EXIF.length + 8) {
                file.get(at + 4, head);
                if (Arrays.equals(head, EXIF)) {
                    int from = at + 4 + EXIF.length;
                    return inDirectory(file.slice(from, Math.min(at + 2 + length, file.limit()) - from));
                }
            }
            at += 2 + length;
        }
        return 1;
    }

    private static int inDirectory(ByteBuffer notes) {
        notes.order(notes.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = notes.getInt(4);
        int entries = notes.getShort(directory) & 0xFFFF;
        for (int entry = 0; entry < entries; entry++) {
            int at = directory + 2 + 12 * entry;
            if ((notes.getShort(at) & 0xFFFF) == TAG) {
                int value = notes.getShort(at + 8);
                return value >= 1 && value <= 8 ? value : 1;
            }
        }
        return 1;
    }

    /// The picture as it was seen.
    BufferedImage turn(BufferedImage taken) {
        if (value == 1) {
            return taken;
        }
        double w = taken.getWidth();
        double h = taken.getHeight();
        AffineTransform turn = switch (value) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            default -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
        boolean across = value >= 5;
        BufferedImage upright = new BufferedImage(
                across ? taken.getHeight() : taken.getWidth(),
                across ? taken.getWidth() : taken.getHeight(),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = upright.createGraphics();
        graphics.drawImage(taken, turn, null);
        graphics.dispose();
        return upright;
    }
}
