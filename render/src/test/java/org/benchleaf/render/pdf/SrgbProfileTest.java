package org.benchleaf.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import org.junit.jupiter.api.Test;

class SrgbProfileTest {
    /// The color engine of the JDK (Little CMS) with its own profile of sRGB stands against ours.
    @Test
    void everyColorComesBackAsTheSrgbOfTheJdk() {
        ICC_ColorSpace ours = new ICC_ColorSpace(ICC_Profile.getInstance(SrgbProfile.bytes()));
        ColorSpace jdk = ColorSpace.getInstance(ColorSpace.CS_sRGB);
        for (int red = 0; red <= 255; red += 51) {
            for (int green = 0; green <= 255; green += 51) {
                for (int blue = 0; blue <= 255; blue += 51) {
                    float[] color = {red / 255f, green / 255f, blue / 255f};
                    float[] mine = ours.toCIEXYZ(color);
                    float[] theirs = jdk.toCIEXYZ(color);
                    for (int part = 0; part < 3; part++) {
                        assertThat(mine[part]).isCloseTo(theirs[part], within(0.002f));
                    }
                }
            }
        }
    }

    @Test
    void theProfileSaysHowLongItIs() {
        byte[] profile = SrgbProfile.bytes();
        assertThat(java.nio.ByteBuffer.wrap(profile).getInt()).isEqualTo(profile.length);
    }
}
