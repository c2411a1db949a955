package org.benchleaf.render.figure;

/// A crown in winter: boughs that reach its outline, and twigs on them.
final class BareCrowns implements Crowns {
    private static final int BOUGHS = 9;
    /// A crown that begins so low, as a share of its height, rises from the ground in many stems.
    private static final double FROM_GROUND = 0.08;

    private final Brush brush;

    BareCrowns(Brush brush) {
        this.brush = brush;
    }

    @Override
    public void dense(Profile profile, double centerX, double bottom, double top, double half, double leafLength) {
        double height = top - bottom;
        if (bottom < height * FROM_GROUND) {
            fan(profile, centerX, bottom, height, half);
        } else {
            boughs(profile, centerX, bottom, height, half);
        }
    }

    private void boughs(Profile profile, double cx, double bottom, double height, double half) {
        double foot = Math.clamp(height * 0.018, 0.5, 3);
        brush.trunk(cx, bottom + height * 0.3, cx, bottom + height * 0.65, cx, bottom + height * 0.98, foot, 0.25);
        for (int i = 0; i < BOUGHS; i++) {
            double t = 0.12 + 0.8 * i / (BOUGHS - 1);
            for (int side = -1; side <= 1; side += 2) {
                double reach = profile.reach(t) * half * brush.between(0.86, 0.98) * side;
                double startY = bottom + height * Math.max(0, t * 0.72 - 0.14);
                bough(
                        cx,
                        startY,
                        cx + reach * 0.5,
                        startY + (bottom + height * t - startY) * 0.34,
                        cx + reach,
                        bottom + height * t,
                        foot * (1 - 0.55 * t));
            }
        }
    }

    private void fan(Profile profile, double cx, double bottom, double height, double half) {
        int stems = 2 * BOUGHS + 1;
        for (int i = 0; i < stems; i++) {
            double u = -1 + 2.0 * i / (stems - 1);
            double t = Math.min(0.97, 1 - 0.62 * u * u) * brush.between(0.9, 1);
            double reach = profile.reach(Math.min(t, 0.9)) * half;
            double x = Math.clamp(u * half * 0.98, -reach, reach);
            bough(
                    cx + u * half * 0.1,
                    bottom,
                    cx + x * 0.42,
                    bottom + height * t * 0.5,
                    cx + x,
                    bottom + height * t,
                    Math.clamp(height * 0.014, 0.45, 1.8));
        }
    }

    private void bough(double x0, double y0, double bendX, double bendY, double x1, double y1, double foot) {
        brush.trunk(x0, y0, bendX, bendY, x1, y1, foot, 0.25);
        double length = Math.hypot(x1 - x0, y1 - y0);
        for (int k = 0; k < 5; k++) {
            double s = 0.36 + 0.13 * k;
            double along = Curves.angle(x0, y0, bendX, bendY, x1, y1, s) + (k % 2 == 0 ? 0.62 : -0.62);
            // twigs turn to the light
            double up = along + (Math.PI / 2 - along) * 0.3;
            double x = Curves.at(x0, bendX, x1, s);
            double y = Curves.at(y0, bendY, y1, s);
            double reach = length * brush.between(0.16, 0.26) * (1.15 - 0.5 * s);
            brush.trunk(
                    x,
                    y,
                    x + Math.cos(along) * reach * 0.5,
                    y + Math.sin(along) * reach * 0.5,
                    x + Math.cos(up) * reach,
                    Math.max(0, y + Math.sin(up) * reach),
                    Math.clamp(foot * 0.4, 0.28, 0.8),
                    0.2);
        }
    }

    @Override
    public void cloud(double cx, double cy, double half, double height, double leafLength) {
        for (int side = -1; side <= 1; side++) {
            bough(
                    cx - side * half * 0.15,
                    cy - height * 0.42,
                    cx + side * half * 0.4,
                    cy - height * 0.2,
                    cx + side * half * 0.92,
                    cy + height * 0.26,
                    Math.clamp(height * 0.05, 0.4, 1.6));
        }
    }
}
