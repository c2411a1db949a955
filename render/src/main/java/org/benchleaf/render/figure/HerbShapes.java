package org.benchleaf.render.figure;

import org.benchleaf.shared.plant.Habit;

/// Perennials, grasses, ferns and climbers.
final class HerbShapes {
    private final Brush brush;
    private final double w;
    private final double h;
    private final double leaf;

    HerbShapes(Brush brush, double w, double h) {
        this.brush = brush;
        this.w = w;
        this.h = h;
        this.leaf = Math.clamp(Math.sqrt(w * h) * 0.1, 0.6, 10);
    }

    void grass(Habit habit) {
        double arch = switch (habit) {
            case COLUMNAR, UPRIGHT, PYRAMIDAL -> 0.35;
            case VASE, OVAL -> 0.6;
            default -> 1;
        };
        int blades = (int) Math.clamp(w * 1.5, 34, 90);
        for (int i = 0; i < blades; i++) {
            double u = -1 + 2.0 * i / (blades - 1) + brush.between(-0.06, 0.06);
            double length = brush.between(0.68, 1);
            double foot = u * w * 0.09;
            double tipX = Math.clamp(u * w * 0.5 * (0.72 + 0.28 * length), -w / 2, w / 2);
            double droop = arch * (0.12 + 0.62 * Math.abs(u) * Math.abs(u));
            double tipY = h * length * (1 - droop);
            double bendX = foot + (tipX - foot) * (0.5 + 0.14 * arch);
            double bendY = h * length * (1.02 - 0.18 * Math.abs(u) * arch);
            brush.blade(
                    foot,
                    bendX,
                    bendY,
                    tipX,
                    Math.max(h * 0.03, tipY),
                    Math.clamp(h * 0.024, 0.5, 2.1),
                    brush.between(-0.26, 0.34) - 0.08 * u);
        }
    }

    void fern() {
        int fronds = 11;
        for (int i = 0; i < fronds; i++) {
            int order = i % 2 == 0 ? i / 2 : fronds - 1 - i / 2;
            double u = -1 + 2.0 * order / (fronds - 1);
            frond(u, brush.between(0.88, 1));
        }
    }

    private void frond(double u, double size) {
        double tipX = u * w * 0.5;
        double tipY = h * size * (1 - 0.72 * Math.pow(Math.abs(u), 1.6));
        double bendX = u * w * 0.2;
        double bendY = h * size * 1.2 * (1 - 0.12 * Math.abs(u));
        brush.stem(u * w * 0.03, 0, bendX, bendY * 0.9, tipX, tipY, Math.max(0.5, h * 0.014), 0.25);
        int pairs = (int) Math.clamp(h / 4, 9, 20);
        double shade = brush.between(-0.14, 0.16) - 0.06 * u;
        for (int k = 2; k < pairs; k++) {
            double s = (double) k / pairs;
            double x = Curves.at(u * w * 0.03, bendX, tipX, s);
            double y = Curves.at(0, bendY * 0.9, tipY, s);
            double along = Curves.angle(u * w * 0.03, 0, bendX, bendY * 0.9, tipX, tipY, s);
            double length = Math.sqrt(w * h) * 0.19 * Math.sin(Math.PI * Math.min(1, 0.1 + s * 0.92)) * size;
            brush.leaf(x, y, along + 1.05, length, 0.3, shade + 0.06);
            brush.leaf(x, y, along - 1.05, length, 0.3, shade - 0.05);
        }
    }

    void perennial(Habit habit) {
        switch (habit) {
            case MAT, SPREADING ->
                new LeafyCrowns(brush).dense(Profile.CUSHION, 0, 0, h, w / 2, Math.min(leaf, h * 0.32));
            case MOUNDED, ROUNDED, IRREGULAR -> leafyMound();
            case ROSETTE -> rosette();
            case FOUNTAIN, ARCHING, WEEPING -> fern();
            case CLIMBING -> climber();
            default -> leafyStems(habit == Habit.UPRIGHT || habit == Habit.COLUMNAR ? 0.62 : 1);
        }
    }

    private void leafyMound() {
        new LeafyCrowns(brush).dense(Profile.DOME, 0, 0, h * 0.96, w * 0.48, leaf * 0.85);
        int n = 26;
        for (int i = 0; i < n; i++) {
            double u = -1 + 2.0 * i / (n - 1);
            double y = h * Math.sqrt(Math.max(0, 1 - u * u)) * brush.between(0.55, 0.84);
            brush.leaf(
                    u * w * 0.43,
                    y,
                    Math.PI / 2 - u * 1.2 + brush.between(-0.4, 0.4),
                    leaf * 1.2,
                    0.46,
                    brush.between(-0.1, 0.3) - 0.1 * u);
        }
    }

    private void rosette() {
        int rows = 3;
        for (int row = 0; row < rows; row++) {
            int n = 11 - row * 2;
            for (int i = 0; i < n; i++) {
                double u = -1 + 2.0 * i / (n - 1) + brush.between(-0.04, 0.04);
                double reach = 1 - 0.2 * row;
                double angle = Math.PI / 2 - u * 1.22;
                double length = Math.hypot(u * w * 0.5, h * (1 - 0.55 * u * u)) * reach;
                double foot = length * 0.3;
                brush.stem(
                        0,
                        0,
                        Math.cos(angle) * foot * 0.5,
                        Math.sin(angle) * foot * 0.6,
                        Math.cos(angle) * foot,
                        Math.sin(angle) * foot,
                        Math.max(0.5, h * 0.02),
                        0.4);
                brush.leaf(
                        Math.cos(angle) * foot,
                        Math.max(0, Math.sin(angle) * foot),
                        angle,
                        length - foot,
                        0.46,
                        -0.14 + 0.15 * row + brush.between(-0.06, 0.1) - 0.08 * u);
            }
        }
    }

    private void leafyStems(double share) {
        int stems = (int) Math.clamp(w / 3.4, 9, 19);
        for (int i = 0; i < stems; i++) {
            double u = -1 + 2.0 * i / (stems - 1);
            double height = h * (1 - 0.2 * u * u) * brush.between(0.9, 1);
            double tipX = u * w * 0.5 * share * 0.92;
            brush.stem(
                    u * w * 0.12,
                    0,
                    u * w * 0.2 * share,
                    height * 0.5,
                    tipX,
                    height * 0.97,
                    Math.max(0.5, h * 0.012),
                    0.3);
            int leaves = (int) Math.clamp(height / (leaf * 0.62), 6, 15);
            for (int k = 1; k <= leaves; k++) {
                double s = (double) k / (leaves + 0.4);
                double x = Curves.at(u * w * 0.12, u * w * 0.2 * share, tipX, s);
                double y = Curves.at(0, height * 0.5, height * 0.97, s);
                int side = (k + i) % 2 == 0 ? 1 : -1;
                double size = leaf * (1.5 - 0.8 * s);
                brush.leaf(
                        x, y, Math.PI / 2 - u * 0.35 - side * 0.95, size, 0.46, brush.between(-0.2, 0.28) - 0.08 * u);
            }
            brush.leaf(tipX, height * 0.95, Math.PI / 2 - u * 0.3, leaf * 0.6, 0.5, 0.1);
        }
    }

    void climber() {
        double post = Math.clamp(h * 0.01, 0.5, 1.4);
        for (double u : new double[] {-0.3, 0, 0.3}) {
            brush.support(u * w, 0, u * w, h * 0.98, post);
        }
        for (double t : new double[] {0.2, 0.45, 0.7, 0.95}) {
            brush.support(-w * 0.36, h * t, w * 0.36, h * t, post * 0.7);
        }
        double t = Math.max(0.6, h * 0.014);
        brush.trunk(0, 0, -w * 0.3, h * 0.25, w * 0.08, h * 0.5, t, t * 0.7);
        brush.trunk(w * 0.08, h * 0.5, w * 0.34, h * 0.7, -w * 0.06, h * 0.92, t * 0.7, 0.4);
        brush.trunk(0, 0, w * 0.3, h * 0.3, -w * 0.16, h * 0.62, t * 0.8, 0.4);
        int leaves = (int) Math.clamp(w * h / (leaf * leaf) * 1.5, 90, 230);
        brush.leavesByShade(() -> {
            for (int i = 0; i < leaves; i++) {
                double y = h * Math.pow(brush.chance(), 0.8);
                double half = w * 0.5 * (0.4 + 0.6 * Math.sin(Math.PI * Math.min(1, 0.14 + y / h * 0.78)));
                double x = brush.between(-1, 1) * half * 0.94;
                brush.leaf(
                        x,
                        Math.max(leaf, y),
                        -Math.PI / 2 + brush.between(-1.2, 1.2),
                        leaf * brush.between(0.75, 1.05),
                        0.56,
                        brush.between(-0.24, 0.3) - 0.12 * x / w);
            }
        });
    }
}
