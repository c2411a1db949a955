package org.benchleaf.render.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.assertj.core.data.Offset;
import org.benchleaf.shared.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogoTest {
    private static byte[] svg(String inner) {
        return ("<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
                        + " viewBox='0 0 200 100'>" + inner + "</svg>")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static Logo read(byte[] file) {
        return Logo.read(file, "logo").orThrow();
    }

    private static String refusal(byte[] file) {
        return Logo.read(file, "logo") instanceof Reading.Refused<Logo>(var problem) ? problem.key() : "read";
    }

    private static BufferedImage pixels(Logo logo) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(logo.png()));
    }

    @Test
    void aDrawingBecomesDotsOfItsOwnColorsAndShape() throws IOException {
        Logo logo = read(svg("<rect width='100' height='100' fill='#2f5f34'/>"));
        assertThat(logo.aspect()).isCloseTo(2, Offset.offset(0.01));
        BufferedImage dots = pixels(logo);
        assertThat(dots.getRGB(dots.getWidth() / 4, dots.getHeight() / 2)).isEqualTo(0xFF2F5F34);
        assertThat(dots.getRGB(dots.getWidth() * 3 / 4, dots.getHeight() / 2)).isEqualTo(0xFFFFFFFF);
    }

    @Test
    void whatIsSeeThroughBecomesWhite() throws IOException {
        BufferedImage clear = new BufferedImage(300, 200, BufferedImage.TYPE_INT_ARGB);
        clear.setRGB(10, 10, 0xFF00AA00);
        BufferedImage dots = pixels(read(png(clear)));
        assertThat(dots.getRGB(100, 100)).isEqualTo(0xFFFFFFFF);
        assertThat(dots.getRGB(10, 10)).as("without loss").isEqualTo(0xFF00AA00);
    }

    @Test
    void twoThatLookTheSameAreToldApartFromOthersOnly() {
        byte[] green = svg("<rect width='100' height='100' fill='#2f5f34'/>");
        assertThat(read(green)).hasToString(read(green).toString());
        assertThat(read(green).toString())
                .isNotEqualTo(read(svg("<rect width='100' height='100' fill='#2f5f35'/>"))
                        .toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE svg [<!ENTITY a 'b'>]><svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'/>",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 0 0'/>",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><rect",
                "<html><body>no drawing</body></html>",
                "GIF89a"
            })
    void whatIsNoLogoIsRefused(String file) {
        assertThat(refusal(file.getBytes(StandardCharsets.UTF_8))).isEqualTo("logo.unreadable");
    }

    @Test
    void oneThatIsMuchLongerThanWideCannotBeRead() throws IOException {
        assertThat(refusal(png(new BufferedImage(900, 100, BufferedImage.TYPE_INT_RGB))))
                .isEqualTo("logo.shape");
        assertThat(refusal(png(new BufferedImage(800, 100, BufferedImage.TYPE_INT_RGB))))
                .isEqualTo("read");
    }

    @Test
    void aDrawingOpensNoFileAndAsksNoServer(@TempDir Path folder) throws IOException {
        BufferedImage red = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
        for (int at = 0; at < 100; at++) {
            red.setRGB(at % 10, at / 10, 0xFFFF0000);
        }
        Path canary = Files.write(folder.resolve("canary.png"), png(red));
        try (ServerSocket server = new ServerSocket(0)) {
            server.setSoTimeout(300);
            String there = "http://127.0.0.1:" + server.getLocalPort() + "/canary.png";
            byte[] hostile = svg("<image width='200' height='100' xlink:href='" + canary.toUri() + "'/>"
                    + "<image width='200' height='100' href='" + there + "'/>"
                    + "<use href='" + there + "#a'/><style>@import url(" + there + ");</style>");
            if (Logo.read(hostile, "logo") instanceof Reading.Read<Logo>(Logo logo)) {
                BufferedImage dots = pixels(logo);
                assertThat(dots.getRGB(dots.getWidth() / 2, dots.getHeight() / 2))
                        .isEqualTo(0xFFFFFFFF);
            }
            org.junit.jupiter.api.Assertions.assertThrows(SocketTimeoutException.class, server::accept);
        }
    }
}
