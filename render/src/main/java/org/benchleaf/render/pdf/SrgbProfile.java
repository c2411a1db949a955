package org.benchleaf.render.pdf;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/// An ICC profile of sRGB, written here from its published numbers, so that every machine embeds the same bytes and
/// none has to be shipped: ICC.1:2010 (version 4.3), a display profile of three colorants and one curve.
///
/// Colorants and curve: IEC 61966-2-1, adapted to D50 with the Bradford matrix, as www.color.org publishes them for
/// sRGB; from memory. A test holds them against the sRGB of the JDK's color engine.
final class SrgbProfile {
    private static final int HEADER = 128;
    private static final String NAME = "sRGB";

    private SrgbProfile() {}

    static byte[] bytes() {
        try {
            return profile();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static byte[] profile() throws IOException {
        byte[] curve = curve();
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", text(NAME));
        tags.put("cprt", text("No copyright, use freely"));
        tags.put("wtpt", xyz(0.9642, 1, 0.8249));
        tags.put("chad", matrix(1.04788, 0.02292, -0.05019, 0.02959, 0.99048, -0.01707, -0.00925, 0.01508, 0.75168));
        tags.put("rXYZ", xyz(0.43607, 0.22249, 0.01392));
        tags.put("gXYZ", xyz(0.38515, 0.71687, 0.09708));
        tags.put("bXYZ", xyz(0.14307, 0.06061, 0.71410));
        tags.put("rTRC", curve);
        tags.put("gTRC", curve);
        tags.put("bTRC", curve);
        ByteArrayOutputStream table = new ByteArrayOutputStream();
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        DataOutputStream entries = new DataOutputStream(table);
        entries.writeInt(tags.size());
        int start = HEADER + 4 + 12 * tags.size();
        Map<byte[], Integer> placed = new java.util.IdentityHashMap<>();
        for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
            Integer place = placed.get(tag.getValue());
            if (place == null) {
                place = start + data.size();
                placed.put(tag.getValue(), place);
                data.write(tag.getValue());
                data.write(new byte[(4 - tag.getValue().length % 4) % 4]);
            }
            entries.writeBytes(tag.getKey());
            entries.writeInt(place);
            entries.writeInt(tag.getValue().length);
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.write(header(start + data.size()));
        whole.write(table.toByteArray());
        whole.write(data.toByteArray());
        return whole.toByteArray();
    }

    private static byte[] header(int size) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(size);
        out.writeInt(0); // no color engine preferred
        out.writeInt(0x04300000); // version 4.3
        out.writeBytes("mntrRGB XYZ ");
        for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
            out.writeShort(part); // a fixed date: same bytes every time
        }
        out.writeBytes("acsp");
        out.write(new byte[28]); // no platform, flags, maker, model, attributes; perceptual
        out.write(new byte[] {0, 0, (byte) 0xF6, (byte) 0xD6, 0, 1, 0, 0, 0, 0, (byte) 0xD3, 0x2D}); // D50
        out.write(new byte[HEADER - out.size()]);
        return bytes.toByteArray();
    }

    private static byte[] text(String words) throws IOException {
        byte[] units = words.getBytes(StandardCharsets.UTF_16BE);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeBytes("mluc");
        out.writeInt(0);
        out.writeInt(1);
        out.writeInt(12);
        out.writeBytes("enUS");
        out.writeInt(units.length);
        out.writeInt(28);
        out.write(units);
        return bytes.toByteArray();
    }

    private static byte[] xyz(double... values) throws IOException {
        return numbers("XYZ ", values);
    }

    private static byte[] matrix(double... values) throws IOException {
        return numbers("sf32", values);
    }

    private static byte[] numbers(String type, double[] values) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeBytes(type);
        out.writeInt(0);
        for (double value : values) {
            out.writeInt((int) Math.round(value * 65536));
        }
        return bytes.toByteArray();
    }

    /// Y = ((X + 0.055) / 1.055) ^ 2.4 from 0.04045, X / 12.92 below.
    private static byte[] curve() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeBytes("para");
        out.writeInt(0);
        out.writeShort(3);
        out.writeShort(0);
        for (double value : new double[] {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045}) {
            out.writeInt((int) Math.round(value * 65536));
        }
        return bytes.toByteArray();
    }
}
