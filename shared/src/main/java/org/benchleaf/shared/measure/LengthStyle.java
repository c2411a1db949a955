package org.benchleaf.shared.measure;

/// How lengths are written for people: feet and inches, metres and centimetres, or both.
///
/// Numbers are rounded to what a gardener measures: whole feet from 3 ft up (halves below 10 ft where they differ),
/// whole inches below; tenths of a metre from 1 m up, 5 cm steps below.
public enum LengthStyle {
    IMPERIAL,
    METRIC,
    BOTH;

    private static final double FOOT_CM = 30.48;
    private static final double INCH_CM = 2.54;

    /// `3–5 ft`, `0.9–1.5 m` or `3–5 ft (0.9–1.5 m)`.
    public String write(LengthRange range) {
        return switch (this) {
            case IMPERIAL -> imperial(range);
            case METRIC -> metric(range);
            case BOTH -> imperial(range) + " (" + metric(range) + ")";
        };
    }

    /// A single length in cm, for example a shortfall: `8 in`, `20 cm`.
    public String write(int cm) {
        return write(new LengthRange(cm, cm));
    }

    private static String imperial(LengthRange range) {
        boolean feet = range.highCm() >= 3 * FOOT_CM - 0.6;
        String low = feet ? feet(range.lowCm()) : inches(range.lowCm());
        String high = feet ? feet(range.highCm()) : inches(range.highCm());
        return (low.equals(high) ? high : low + "–" + high) + (feet ? " ft" : " in");
    }

    private static String feet(int cm) {
        double feet = cm / FOOT_CM;
        double step = feet < 10 ? 2 : 1;
        return plain(Math.max(0.5, Math.round(feet * step) / step));
    }

    private static String inches(int cm) {
        return Long.toString(Math.max(1, Math.round(cm / INCH_CM)));
    }

    private static String metric(LengthRange range) {
        boolean metres = range.highCm() >= 100;
        String low = metres ? metres(range.lowCm()) : centimetres(range.lowCm());
        String high = metres ? metres(range.highCm()) : centimetres(range.highCm());
        return (low.equals(high) ? high : low + "–" + high) + (metres ? " m" : " cm");
    }

    private static String metres(int cm) {
        return cm >= 1000 ? plain(Math.round(cm / 100.0)) : plain(Math.max(0.1, Math.round(cm / 10.0) / 10.0));
    }

    private static String centimetres(int cm) {
        return Long.toString(cm < 10 ? cm : Math.round(cm / 5.0) * 5);
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
