package org.benchleaf.render.figure;

import org.benchleaf.shared.plant.Habit;

/// Trees and shrubs: one outline for each habit, on a trunk or from the ground.
final class WoodyShapes {
    private final Brush brush;
    private final Crowns crowns;
    private final double w;
    private final double h;
    private final double leaf;

    /// @param w spread in points
    /// @param h height in points
    /// @param bare whether it is shown in winter, without leaves
    WoodyShapes(Brush brush, double w, double h, boolean bare) {
        this.brush = brush;
        this.crowns = bare ? new BareCrowns(brush) : new LeafyCrowns(brush);
        this.w = w;
        this.h = h;
        this.leaf = Math.clamp(Math.sqrt(w * h) * 0.054, 0.5, 5.2);
    }

    void tree(Habit habit) {
        switch (habit) {
            case COLUMNAR -> crowned(Profile.COLUMN, 0.1);
            case PYRAMIDAL -> crowned(Profile.CONE, 0.12);
            case OVAL, UPRIGHT, CLUMP -> crowned(Profile.EGG, 0.2);
            case ROUNDED, MOUNDED, CLIMBING, ROSETTE, MAT -> crowned(Profile.BALL, 0.24);
            case VASE, ARCHING, FOUNTAIN -> vaseTree();
            case SPREADING -> layeredTree(false);
            case IRREGULAR -> layeredTree(true);
            case WEEPING -> weeping();
            case MULTISTEM -> multistem();
        }
    }

    void shrub(Habit habit) {
        switch (habit) {
            case COLUMNAR -> bushy(Profile.COLUMN);
            case PYRAMIDAL -> bushy(Profile.CONE);
            case OVAL -> bushy(Profile.EGG);
            case ROUNDED -> bushy(Profile.BALL);
            case UPRIGHT, MULTISTEM -> bushy(Profile.SHEAF);
            case MOUNDED, ROSETTE -> bushy(Profile.DOME);
            case VASE, CLUMP -> vaseShrub();
            case SPREADING -> spreadingShrub();
            case MAT -> mat();
            case ARCHING, FOUNTAIN, CLIMBING -> arching();
            case WEEPING -> weeping();
            case IRREGULAR -> irregularShrub();
        }
    }

    private double trunkWidth() {
        return Math.clamp(h * 0.045, 0.7, 9);
    }

    private void crowned(Profile profile, double clear) {
        double bole = h * clear;
        brush.trunk(0, 0, -w * 0.01, h * 0.3, 0, h * 0.62, trunkWidth(), trunkWidth() * 0.4);
        brush.trunk(0, bole * 0.85, -w * 0.08, bole * 1.2, -w * 0.2, h * 0.5, trunkWidth() * 0.5, 0.3);
        brush.trunk(0, bole * 0.95, w * 0.08, bole * 1.25, w * 0.2, h * 0.52, trunkWidth() * 0.5, 0.3);
        crowns.dense(profile, 0, bole, h, w / 2, leaf);
    }

    private void vaseTree() {
        double bole = h * 0.2;
        double t = trunkWidth();
        brush.trunk(0, 0, 0, bole * 0.6, 0, bole * 1.1, t, t * 0.8);
        for (double u : new double[] {-0.8, -0.4, 0, 0.42, 0.82}) {
            brush.trunk(u * t * 0.3, bole * 0.9, u * w * 0.1, h * 0.36, u * w * 0.36, h * 0.72, t * 0.5, 0.4);
        }
        crowns.dense(Profile.VASE, 0, h * 0.34, h, w / 2, leaf);
    }

    private void layeredTree(boolean leaning) {
        double t = trunkWidth();
        double lean = leaning ? w * 0.07 : 0;
        brush.trunk(-lean, 0, -lean * 1.6, h * 0.3, lean, h * 0.82, t, t * 0.35);
        double[][] layers = leaning
                ? new double[][] {
                    {-0.24, 0.34, 0.2}, {0.27, 0.46, 0.21}, {-0.2, 0.62, 0.24}, {0.2, 0.74, 0.2}, {-0.02, 0.9, 0.17}
                }
                : new double[][] {
                    {-0.25, 0.42, 0.25},
                    {0.26, 0.47, 0.24},
                    {0, 0.6, 0.4},
                    {-0.16, 0.74, 0.3},
                    {0.17, 0.78, 0.28},
                    {0, 0.9, 0.25}
                };
        for (double[] layer : layers) {
            brush.trunk(
                    0,
                    h * (layer[1] - 0.14),
                    layer[0] * w * 0.5,
                    h * (layer[1] - 0.05),
                    layer[0] * w,
                    h * layer[1],
                    t * 0.4,
                    0.4);
        }
        for (double[] layer : layers) {
            double thick = h * (leaning ? 0.14 : 0.18);
            crowns.cloud(layer[0] * w, Math.min(h * layer[1], h - thick * 0.62), layer[2] * w, thick, leaf);
        }
    }

    private void weeping() {
        double t = trunkWidth();
        brush.trunk(0, 0, -w * 0.03, h * 0.45, 0, h * 0.86, t, t * 0.5);
        crowns.dense(Profile.DOME, 0, h * 0.7, h, w * 0.3, leaf);
        int strands = 23;
        for (int i = 0; i < strands; i++) {
            double u = -1 + 2.0 * i / (strands - 1);
            double startX = u * w * 0.16;
            double startY = h * (0.96 - 0.1 * u * u);
            double endX = u * w * 0.5;
            double endY = h * (0.08 + 0.26 * brush.chance() + 0.12 * (1 - Math.abs(u)));
            double bendX = u * w * 0.52;
            double bendY = h * (1.02 - 0.12 * u * u);
            brush.stem(startX, startY, bendX, bendY, endX, endY, Math.max(0.4, t * 0.16), 0.25);
            int leaves = (int) Math.clamp(h * 0.8 / Math.max(1, leaf * 0.6), 9, 26);
            for (int k = 2; k <= leaves; k++) {
                double s = (double) k / leaves;
                double x = Curves.at(startX, bendX, endX, s);
                double y = Curves.at(startY, bendY, endY, s);
                double along = Curves.angle(startX, startY, bendX, bendY, endX, endY, s);
                double side = k % 2 == 0 ? 0.55 : -0.55;
                brush.leaf(x, y, along + side, leaf * 1.35, 0.4, brush.between(-0.18, 0.24) - 0.08 * u);
            }
        }
    }

    private void multistem() {
        double t = trunkWidth() * 0.62;
        for (double u : new double[] {-0.9, -0.35, 0.25, 0.85}) {
            brush.trunk(u * t * 1.4, 0, u * w * 0.06, h * 0.3, u * w * 0.2, h * 0.68, t, t * 0.4);
            brush.trunk(u * w * 0.1, h * 0.36, u * w * 0.2, h * 0.44, u * w * 0.34, h * 0.6, t * 0.5, 0.3);
        }
        crowns.dense(Profile.EGG, 0, h * 0.3, h, w / 2, leaf);
    }

    private void stems(double spreadShare) {
        int n = 7;
        for (int i = 0; i < n; i++) {
            double u = -1 + 2.0 * i / (n - 1);
            brush.trunk(
                    u * w * 0.06,
                    0,
                    u * w * spreadShare * 0.6,
                    h * 0.12,
                    u * w * spreadShare,
                    h * 0.4,
                    Math.max(0.6, h * 0.014),
                    0.3);
        }
    }

    private void bushy(Profile profile) {
        stems(0.3);
        crowns.dense(profile, 0, h * 0.035, h, w / 2, leaf);
    }

    private void vaseShrub() {
        int n = 9;
        for (int i = 0; i < n; i++) {
            double u = -1 + 2.0 * i / (n - 1);
            brush.trunk(u * w * 0.07, 0, u * w * 0.16, h * 0.3, u * w * 0.4, h * 0.74, Math.max(0.7, h * 0.016), 0.3);
        }
        crowns.dense(Profile.VASE, 0, h * 0.2, h, w / 2, leaf);
    }

    private void spreadingShrub() {
        stems(0.34);
        for (double[] layer : new double[][] {
            {-0.27, 0.3, 0.23},
            {0.28, 0.32, 0.22},
            {0, 0.42, 0.36},
            {-0.14, 0.64, 0.28},
            {0.16, 0.68, 0.26},
            {0, 0.82, 0.22}
        }) {
            double thick = h * 0.34;
            crowns.cloud(layer[0] * w, Math.min(h * layer[1], h - thick * 0.62), layer[2] * w, thick, leaf);
        }
    }

    private void mat() {
        crowns.dense(Profile.CUSHION, 0, 0, h, w / 2, Math.min(leaf, h * 0.3));
    }

    private void arching() {
        int canes = 17;
        double[][] tips = new double[canes][];
        for (int i = 0; i < canes; i++) {
            int order = i % 2 == 0 ? i / 2 : canes - 1 - i / 2;
            double u = -1 + 2.0 * order / (canes - 1);
            double reach = brush.between(0.86, 1);
            double tipX = u * w * 0.5 * reach;
            double tipY = h * reach * (0.96 - 0.72 * Math.pow(Math.abs(u), 1.8));
            tips[i] = new double[] {u, u * w * 0.06, u * w * 0.3, h * reach * (1.32 + 0.1 * Math.abs(u)), tipX, tipY};
            brush.trunk(tips[i][1], 0, tips[i][2], tips[i][3], tipX, tipY, Math.max(0.5, h * 0.009), 0.3);
        }
        crowns.dense(Profile.DOME, 0, h * 0.02, h * 0.72, w * 0.38, leaf);
        brush.leavesByShade(() -> {
            for (double[] cane : tips) {
                int leaves = 22;
                for (int k = 5; k <= leaves; k++) {
                    double s = (double) k / leaves;
                    double along = Curves.angle(cane[1], 0, cane[2], cane[3], cane[4], cane[5], s);
                    double side = k % 2 == 0 ? 0.8 : -0.8;
                    brush.leaf(
                            Curves.at(cane[1], cane[2], cane[4], s),
                            Curves.at(0, cane[3], cane[5], s),
                            along + side,
                            leaf * (1.6 - 0.4 * s),
                            0.44,
                            brush.between(-0.14, 0.24) - 0.08 * cane[0]);
                }
            }
        });
    }

    private void irregularShrub() {
        stems(0.36);
        for (double[] layer : new double[][] {
            {-0.2, 0.28, 0.26}, {0.25, 0.36, 0.22}, {-0.08, 0.56, 0.26}, {0.2, 0.66, 0.18}, {-0.14, 0.82, 0.18}
        }) {
            double thick = h * 0.32;
            crowns.cloud(layer[0] * w, Math.min(h * layer[1], h - thick * 0.62), layer[2] * w, thick, leaf);
        }
    }
}
