package org.benchleaf.render.figure;

/// The outline of a crown: how far it reaches to the side at each height.
enum Profile {
    COLUMN {
        @Override
        double reach(double t) {
            return Math.pow(1 - Math.pow(Math.abs(2 * t - 0.92) / 1.08, 3.2), 1 / 2.4);
        }
    },
    CONE {
        @Override
        double reach(double t) {
            double skirt = t < 0.1 ? 0.72 + 2.8 * t : 1;
            return skirt * Math.pow(1 - t, 0.82);
        }
    },
    EGG {
        @Override
        double reach(double t) {
            double u = t < 0.42 ? (0.42 - t) / 0.42 : (t - 0.42) / 0.58;
            return Math.sqrt(Math.max(0, 1 - u * u));
        }
    },
    BALL {
        @Override
        double reach(double t) {
            return Math.pow(1 - Math.pow(Math.abs(2 * t - 1), 2.3), 1 / 2.3);
        }
    },
    VASE {
        @Override
        double reach(double t) {
            if (t < 0.7) {
                double u = t / 0.7;
                return 0.16 + 0.84 * u * u * (3 - 2 * u);
            }
            double u = (t - 0.7) / 0.3;
            return Math.pow(1 - Math.pow(u, 2.2), 1 / 2.0);
        }
    },
    TABLE {
        @Override
        double reach(double t) {
            double u = t < 0.5 ? (0.5 - t) / 0.5 : (t - 0.5) / 0.5;
            return Math.pow(Math.max(0, 1 - Math.pow(u, 3)), 1 / 2.2);
        }
    },
    SHEAF {
        @Override
        double reach(double t) {
            return t < 0.62
                    ? 0.5 + 0.5 * Math.sin(t / 0.62 * Math.PI / 2)
                    : Math.sqrt(Math.max(0, 1 - Math.pow((t - 0.62) / 0.38, 2)));
        }
    },
    CUSHION {
        @Override
        double reach(double t) {
            return Math.pow(Math.max(0, 1 - Math.pow(t, 2.2)), 1 / 1.9);
        }
    },
    DOME {
        @Override
        double reach(double t) {
            return t < 0.18
                    ? 0.9 + 0.1 * Math.sin(t / 0.18 * Math.PI / 2)
                    : Math.sqrt(Math.max(0, 1 - Math.pow((t - 0.18) / 0.82, 2.1)));
        }
    };

    /// Half the width at a height, as a share of the greatest half width.
    ///
    /// @param t height as a share of the crown's, 0 to 1
    abstract double reach(double t);
}
