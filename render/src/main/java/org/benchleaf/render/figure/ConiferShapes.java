package org.benchleaf.render.figure;

import org.benchleaf.shared.plant.Habit;

/// Conifers: boughs in tiers on a straight stem, or low sprays.
final class ConiferShapes {
    private final Brush brush;
    private final double w;
    private final double h;

    ConiferShapes(Brush brush, double w, double h) {
        this.brush = brush;
        this.w = w;
        this.h = h;
    }

    void draw(Habit habit) {
        switch (habit) {
            case PYRAMIDAL, OVAL, UPRIGHT, IRREGULAR, MULTISTEM, CLUMP, CLIMBING -> boughs(Profile.CONE, -0.32);
            case COLUMNAR -> boughs(Profile.COLUMN, 0.95);
            case WEEPING -> boughs(Profile.CONE, -1.15);
            case ROUNDED, MOUNDED, ROSETTE -> boughs(Profile.DOME, 0.75);
            case VASE, ARCHING, FOUNTAIN -> boughs(Profile.VASE, 0.62);
            case SPREADING, MAT -> sprays();
        }
    }

    /// @param rise of a bough's tip in radians: negative hangs
    private void boughs(Profile profile, double rise) {
        double trunk = Math.clamp(h * 0.035, 0.6, 6);
        brush.trunk(0, 0, 0, h * 0.4, 0, h * 0.9, trunk, 0.3);
        double half = w / 2;
        int n = 16;
        double[] xy = new double[n * 4];
        for (int i = 0; i < n; i++) {
            double t = i / (n - 1.0);
            double reach = Math.max(0.1, profile.reach(Math.min(0.999, t)) * half * 0.74);
            xy[2 * i] = reach;
            xy[2 * i + 1] = h * (0.05 + 0.93 * t);
            xy[2 * (2 * n - 1 - i)] = -reach;
            xy[2 * (2 * n - 1 - i) + 1] = h * (0.05 + 0.93 * t);
        }
        brush.outline(-0.3, xy);
        int tiers = (int) Math.clamp(h / 7.5, 7, 22);
        for (int tier = 0; tier < tiers; tier++) {
            double t = (tier + 0.3) / tiers;
            double reach = profile.reach(t) * half;
            double y = h * (0.06 + 0.92 * t);
            int across = (int) Math.max(2, Math.round(reach / Math.max(2.2, h * 0.03)));
            for (int k = 0; k <= across; k++) {
                double u = across == 0 ? 0 : -1 + 2.0 * k / across;
                bough(u, reach, y, rise, t);
            }
        }
        brush.leaf(0, h * 0.9, Math.PI / 2, h * 0.1, 0.28, 0.02);
    }

    private void bough(double u, double reach, double y, double rise, double t) {
        double length = Math.clamp(Math.max(reach * 0.5, h * 0.05), 1.2, 17);
        double tipX = u * reach;
        double side = Math.signum(u);
        double angle = side == 0
                ? (rise > 0.5 ? Math.PI / 2 : -Math.PI / 2)
                : side > 0
                        ? rise * (0.5 + 0.5 * Math.abs(u)) + (1 - Math.abs(u)) * (rise > 0.5 ? 0.7 : -0.9)
                        : Math.PI - rise * (0.5 + 0.5 * Math.abs(u)) - (1 - Math.abs(u)) * (rise > 0.5 ? 0.7 : -0.9);
        angle += brush.between(-0.14, 0.14);
        double footX = tipX - Math.cos(angle) * length;
        double footY = Math.max(length * 0.1, y - Math.sin(angle) * length * 0.55);
        double shade = -0.12 + 0.2 * t - 0.14 * u + brush.between(-0.1, 0.1);
        brush.leaf(footX, footY, angle, length, 0.34, shade);
        brush.leaf(
                footX + Math.cos(angle) * length * 0.3,
                footY + Math.sin(angle) * length * 0.3,
                angle + 0.42,
                length * 0.62,
                0.24,
                shade + 0.08);
        brush.leaf(
                footX + Math.cos(angle) * length * 0.3,
                footY + Math.sin(angle) * length * 0.3,
                angle - 0.42,
                length * 0.62,
                0.24,
                shade - 0.06);
    }

    /// Low and wide: fans of sprays, the back rows higher and darker.
    private void sprays() {
        double half = w / 2;
        double[] xy = {
            half * 0.86,
            0,
            half * 0.7,
            h * 0.4,
            half * 0.35,
            h * 0.62,
            0,
            h * 0.68,
            -half * 0.35,
            h * 0.62,
            -half * 0.7,
            h * 0.4,
            -half * 0.86,
            0
        };
        brush.outline(-0.3, xy);
        int n = (int) Math.clamp(w / Math.max(2, h * 0.1), 14, 34);
        for (int row = 0; row < 4; row++) {
            for (int i = 0; i < n; i++) {
                double u = -1 + 2.0 * (i + 0.5) / n + brush.between(-0.03, 0.03);
                double length = Math.min(h * 0.42, w * 0.14) * brush.between(0.85, 1.1);
                double angle = Math.PI / 2 - u * 1.2 + brush.between(-0.35, 0.35);
                double top = h
                        * Profile.CUSHION.reach(Math.min(0.999, Math.abs(u)))
                        * (1 - 0.23 * row)
                        * brush.between(0.86, 1);
                double tipX = Math.clamp(u * half * 1.02, -half, half);
                double py = Math.max(0, top - Math.sin(angle) * length);
                double px = tipX - Math.cos(angle) * length;
                double shade = -0.24 + 0.1 * row + brush.between(-0.06, 0.12) - 0.06 * u;
                brush.leaf(px, py, angle, length, 0.26, shade);
                double midX = px + Math.cos(angle) * length * 0.3;
                double midY = py + Math.sin(angle) * length * 0.3;
                brush.leaf(midX, midY, angle + 0.5, length * 0.5, 0.26, shade + 0.08);
                brush.leaf(midX, midY, angle - 0.5, length * 0.5, 0.26, shade - 0.04);
            }
        }
    }
}
