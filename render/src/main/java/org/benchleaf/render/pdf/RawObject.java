package org.benchleaf.render.pdf;

import java.nio.charset.StandardCharsets;
import org.openpdf.text.pdf.PdfObject;

/// A dictionary or array that is already written. Thousands of pages have hundreds of thousands of structure elements,
/// and a map for each would cost more than the page.
final class RawObject extends PdfObject {
    private RawObject(int type, String written) {
        super(type, written.getBytes(StandardCharsets.ISO_8859_1));
    }

    static RawObject dictionary(String written) {
        return new RawObject(DICTIONARY, written);
    }

    static RawObject array(String written) {
        return new RawObject(ARRAY, written);
    }

    /// A text as PDF writes it: in brackets where it is of plain letters, else UTF-16 in hexadecimal, so that nothing
    /// in it needs escaping.
    static String text(String text) {
        return isPlain(text) ? "(" + text + ")" : hexadecimal(text);
    }

    /// Whether it is the same in every encoding, and nothing in it ends or escapes a text.
    private static boolean isPlain(String text) {
        for (int at = 0; at < text.length(); at++) {
            char character = text.charAt(at);
            if (character < ' ' || character > '~' || character == '(' || character == ')' || character == '\\') {
                return false;
            }
        }
        return true;
    }

    private static String hexadecimal(String text) {
        StringBuilder written = new StringBuilder(text.length() * 4 + 6).append("<FEFF");
        for (int at = 0; at < text.length(); at++) {
            char unit = text.charAt(at);
            for (int shift = 12; shift >= 0; shift -= 4) {
                written.append(Character.toUpperCase(Character.forDigit(unit >> shift & 15, 16)));
            }
        }
        return written.append('>').toString();
    }
}
