package org.benchleaf.render.figure;

/// Fills the outline of a crown with masses of foliage and leaves: darker below and inside, lighter above and to the
/// left, where the light comes from.
final class LeafyCrowns implements Crowns {
    private final Brush brush;

    LeafyCrowns(Brush brush) {
        this.brush = brush;
    }

    @Override
    public void dense(Profile profile, double centerX, double bottom, double top, double half, double leafLength) {
        double height = top - bottom;
        double size = Math.max(1.2, Math.min(Math.min(half, height) * 0.42, Math.sqrt(half * height) * 0.24));
        base(profile, centerX, bottom, height, half, size);
        edge(profile, centerX, bottom, height, half, size, leafLength);
        light(profile, centerX, bottom, height, half, size, leafLength);
    }

    private void base(Profile profile, double cx, double bottom, double height, double half, double size) {
        int n = 14;
        double[] xy = new double[n * 4];
        for (int i = 0; i < n; i++) {
            double t = (i + 0.5) / n;
            double reach = Math.max(0.05, profile.reach(t) * half - size * 0.35);
            xy[2 * i] = cx + reach;
            xy[2 * i + 1] = bottom + t * height;
            int back = 2 * n - 1 - i;
            xy[2 * back] = cx - reach;
            xy[2 * back + 1] = bottom + t * height;
        }
        brush.outline(-0.16, xy);
    }

    private void edge(Profile profile, double cx, double bottom, double height, double half, double size, double leaf) {
        double travelled = size;
        double lastReach = profile.reach(0) * half;
        int steps = 160;
        for (int i = 1; i <= steps; i++) {
            double t = (double) i / steps;
            double reach = profile.reach(Math.min(t, 0.9999)) * half;
            travelled += Math.hypot(reach - lastReach, height / steps);
            lastReach = reach;
            if (travelled < size * 0.62) {
                continue;
            }
            travelled = 0;
            for (int side = -1; side <= 1; side += 2) {
                double r = size * brush.between(0.5, 0.74);
                double x = cx + side * Math.max(0, reach - r * 0.85);
                double y = bottom + Math.clamp(t * height, r * 0.55, Math.max(r * 0.56, height - r * 0.72));
                brush.mass(x, y, r, r * 0.86, (side < 0 ? -0.04 : -0.12) + 0.05 * t);
                tuft(x, y, r, Math.atan2((t - 0.35) * 1.5, side), leaf);
            }
        }
    }

    /// Leaves that break the edge of a mass.
    private void tuft(double x, double y, double r, double outward, double leaf) {
        if (leaf <= 0.7) {
            return;
        }
        for (int k = 0; k < 3; k++) {
            double a = outward + brush.between(-0.9, 0.9);
            brush.leaf(
                    x + Math.cos(a) * r * 0.78,
                    y + Math.sin(a) * r * 0.7,
                    a,
                    leaf * brush.between(0.8, 1.15),
                    0.46,
                    brush.between(-0.16, 0.06));
        }
    }

    private void light(
            Profile profile, double cx, double bottom, double height, double half, double size, double leaf) {
        int masses = (int) Math.min(26, 5 + half * height / (size * size) * 0.9);
        for (int i = 0; i < masses; i++) {
            double t = 0.1 + 0.82 * i / masses;
            double reach = Math.max(0, profile.reach(t) * half - size * 0.8);
            double x = cx + reach * brush.between(-0.95, 0.72);
            double shade = -0.08 + 0.13 * t - 0.06 * (x - cx) / half;
            double r = size * brush.between(0.42, 0.66);
            brush.mass(x, bottom + t * height, r, r * 0.72, shade);
        }
        if (leaf <= 0.7) {
            return;
        }
        int leaves = (int) Math.min(170, half * 2 * height / (leaf * leaf) * 0.62);
        brush.leavesByShade(() -> {
            for (int i = 0; i < leaves; i++) {
                double t = 0.05 + 0.9 * brush.chance();
                double reach = profile.reach(t) * half * 0.9;
                double x = cx + reach * brush.between(-1, 1);
                double across = half == 0 ? 0 : (x - cx) / half;
                double shade = 0.02 + 0.26 * t - 0.14 * across + brush.between(-0.15, 0.12);
                double angle = Math.PI / 2 - across * 1.1 + brush.between(-0.8, 0.8);
                brush.leaf(x, bottom + t * height, angle, leaf * brush.between(0.75, 1.1), 0.42, shade);
            }
        });
    }

    @Override
    public void cloud(double cx, double cy, double half, double height, double leafLength) {
        int n = Math.max(3, (int) (half / Math.max(1, height) * 3));
        for (int layer = 0; layer < 2; layer++) {
            for (int i = 0; i < n; i++) {
                double u = n == 1 ? 0 : -1 + 2.0 * i / (n - 1);
                double r = height * (0.62 - 0.22 * u * u) * (layer == 0 ? 1 : 0.72);
                brush.mass(
                        cx + u * (half - r) - (layer == 0 ? 0 : r * 0.25),
                        cy + (layer == 0 ? 0 : height * 0.22),
                        r * 1.35,
                        r * 0.78,
                        layer == 0 ? -0.1 : 0.08);
            }
        }
        if (leafLength > 0.7) {
            for (int i = 0; i < n * 5; i++) {
                double u = brush.between(-1, 1);
                brush.leaf(
                        cx + u * half * 0.95,
                        cy + height * brush.between(-0.3, 0.45),
                        Math.PI / 2 - u + brush.between(-0.7, 0.7),
                        leafLength * brush.between(0.8, 1.1),
                        0.42,
                        brush.between(-0.16, 0.26));
            }
        }
    }
}
