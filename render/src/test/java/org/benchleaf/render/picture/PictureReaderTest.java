package org.benchleaf.render.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureReaderTest {
    /// Where the white corner must be seen, by CIPA DC-008 (Exif 2.32), 4.6.4, tag Orientation; values from memory.
    @ParameterizedTest
    @CsvSource({
        "1,left,top",
        "2,right,top",
        "3,right,bottom",
        "4,left,bottom",
        "5,left,top",
        "6,right,top",
        "7,right,bottom",
        "8,left,bottom"
    })
    void aPhotographIsTurnedAsTheCameraWasHeld(int orientation, String across, String down) throws IOException {
        Picture picture = read(withExif(jpeg(400, 200), orientation));
        assertThat(picture.width() > picture.height()).isEqualTo(orientation < 5);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.jpeg()));
        int x = across.equals("left") ? 4 : image.getWidth() - 5;
        int y = down.equals("top") ? 4 : image.getHeight() - 5;
        assertThat(new Color(image.getRGB(x, y)).getBlue()).isGreaterThan(200);
    }

    @Test
    void whatTheCameraNotedIsNotPassedOn() throws IOException {
        byte[] noted = withExif(jpeg(400, 200), 1);
        assertThat(new String(noted, StandardCharsets.ISO_8859_1)).contains("Exif");
        assertThat(new String(read(noted).jpeg(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
    }

    @Test
    void aLargePhotographIsMadeSmallerInItsProportion() throws IOException {
        Picture picture = read(jpeg(6000, 4000));
        assertThat(picture.width()).isEqualTo(PictureReader.LONG_SIDE);
        assertThat(picture.height()).isBetween(985, 988);
    }

    @Test
    void aSmallFileThatPromisesABillionPixelsIsNotDecoded() throws IOException {
        assertThat(PictureReader.read(pngHeader(60_000, 60_000), "bomb.png").refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("photograph.too-large"));
    }

    @Test
    void aFileThatBreaksOffIsRefused() throws IOException {
        byte[] whole = jpeg(400, 200);
        assertThat(PictureReader.read(Arrays.copyOf(whole, 300), "half.jpg").refusal())
                .hasValueSatisfying(problem -> assertThat(problem.key()).isEqualTo("photograph.unreadable"));
    }

    @Property(tries = 300)
    void noFileMakesTheReaderThrow(@ForAll @Size(max = 400) byte[] bytes) {
        assertThat(PictureReader.read(bytes, "odd.jpg").refusal()).isPresent();
    }

    @Property(tries = 200)
    void noDamageMakesTheReaderThrow(@ForAll int place, @ForAll byte value) throws IOException {
        byte[] damaged = withExif(jpeg(64, 32), 6);
        damaged[Math.floorMod(place, damaged.length)] = value;
        PictureReader.read(damaged, "damaged.jpg");
    }

    private static Picture read(byte[] file) {
        return PictureReader.read(file, "photo.jpg").toOptional().orElseThrow();
    }

    /// Dark blue but for a white corner at the top left.
    private static byte[] jpeg(int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var graphics = image.createGraphics();
        graphics.setColor(new Color(0x203040));
        graphics.fillRect(0, 0, width, height);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width / 4, height / 4);
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", out);
        return out.toByteArray();
    }

    /// The JPEG with a segment of Exif notes that say how the camera was held.
    private static byte[] withExif(byte[] jpeg, int orientation) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(out);
        data.write(jpeg, 0, 2);
        data.writeShort(0xFFE1);
        data.writeShort(2 + 6 + 8 + 2 + 12 + 4);
        data.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        data.write("MM\0*".getBytes(StandardCharsets.US_ASCII));
        data.writeInt(8);
        data.writeShort(1);
        data.writeShort(274);
        data.writeShort(3);
        data.writeInt(1);
        data.writeShort(orientation);
        data.writeShort(0);
        data.writeInt(0);
        data.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static byte[] pngHeader(int width, int height) throws IOException {
        ByteArrayOutputStream chunk = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(chunk);
        data.writeBytes("IHDR");
        data.writeInt(width);
        data.writeInt(height);
        data.write(new byte[] {8, 2, 0, 0, 0});
        CRC32 sum = new CRC32();
        sum.update(chunk.toByteArray());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream file = new DataOutputStream(out);
        file.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        file.writeInt(13);
        file.write(chunk.toByteArray());
        file.writeInt((int) sum.getValue());
        return out.toByteArray();
    }
}
