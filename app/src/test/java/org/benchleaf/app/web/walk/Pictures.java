package org.benchleaf.app.web.walk;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/// Pictures as cameras make them, and as people who mean harm do.
final class Pictures {
    private static final int WIDE = 640;
    private static final int HIGH = 480;
    private static final int CODE = 320;

    private Pictures() {}

    /// A photograph whose camera noted the place: Exif 2.32 (CIPA DC-008), tag 34853 leads to the GPS
    /// notes, in which tags 1 and 2 are the latitude.
    static byte[] withPlace() {
        byte[] plain = jpeg();
        ByteBuffer notes = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4 + 2 + 24 + 4 + 24);
        notes.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        notes.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        notes.putShort((short) 1)
                .putShort((short) 34853)
                .putShort((short) 4)
                .putInt(1)
                .putInt(26)
                .putInt(0);
        notes.putShort((short) 2);
        notes.putShort((short) 1).putShort((short) 2).putInt(2).put("N\0\0\0".getBytes(StandardCharsets.US_ASCII));
        notes.putShort((short) 2).putShort((short) 5).putInt(3).putInt(56).putInt(0);
        notes.putInt(40).putInt(1).putInt(26).putInt(1).putInt(46).putInt(1);
        ByteBuffer all = ByteBuffer.allocate(plain.length + 4 + notes.capacity());
        all.put(plain, 0, 2).putShort((short) 0xFFE1).putShort((short) (2 + notes.capacity()));
        all.put(notes.array()).put(plain, 2, plain.length - 2);
        return all.array();
    }

    private static byte[] jpeg() {
        BufferedImage image = new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 800; x++) {
            for (int y = 0; y < 600; y++) {
                image.setRGB(x, y, (x / 4) << 16 | (y / 3) << 8 | 0x40);
            }
        }
        return written(image, "jpeg");
    }

    private static byte[] written(BufferedImage image, String format) {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(image, format, bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /// A PNG of some bytes whose header asks for 60,000 × 60,000 pixels (PNG specification, 3rd
    /// edition, 11.2.1).
    static byte[] bomb() {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            DataOutputStream out = new DataOutputStream(bytes);
            out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
            ByteBuffer head = ByteBuffer.allocate(17);
            head.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(60_000).putInt(60_000);
            head.put(new byte[] {8, 2, 0, 0, 0});
            chunk(out, head.array());
            chunk(out, "IDAT".getBytes(StandardCharsets.US_ASCII));
            chunk(out, "IEND".getBytes(StandardCharsets.US_ASCII));
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void chunk(DataOutputStream out, byte[] typeAndData) throws IOException {
        CRC32 check = new CRC32();
        check.update(typeAndData);
        out.writeInt(typeAndData.length - 4);
        out.write(typeAndData);
        out.writeInt((int) check.getValue());
    }

    /// A photograph of a code.
    static byte[] ofCode(String text) {
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        byte[] gray = gray(text);
        for (int at = 0; at < gray.length; at++) {
            image.setRGB(at % WIDE, at / WIDE, (gray[at] & 0xFF) * 0x010101);
        }
        return written(image, "png");
    }

    /// A film of a code, as YUV4MPEG2, which Chromium takes for a camera.
    static byte[] filmOfCode(String text) {
        try (ByteArrayOutputStream film = new ByteArrayOutputStream()) {
            film.write("YUV4MPEG2 W640 H480 F10:1 Ip A1:1 C420jpeg\n".getBytes(StandardCharsets.US_ASCII));
            byte[] noColor = new byte[WIDE * HIGH / 2];
            Arrays.fill(noColor, (byte) 128);
            for (int frame = 0; frame < 10; frame++) {
                film.write("FRAME\n".getBytes(StandardCharsets.US_ASCII));
                film.write(gray(text));
                film.write(noColor);
            }
            return film.toByteArray();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /// A code in the middle of a gray bench.
    private static byte[] gray(String text) {
        try {
            BitMatrix code = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, CODE, CODE);
            byte[] gray = new byte[WIDE * HIGH];
            Arrays.fill(gray, (byte) 170);
            for (int x = 0; x < CODE; x++) {
                for (int y = 0; y < CODE; y++) {
                    gray[(y + (HIGH - CODE) / 2) * WIDE + x + (WIDE - CODE) / 2] = (byte) (code.get(x, y) ? 30 : 235);
                }
            }
            return gray;
        } catch (WriterException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
