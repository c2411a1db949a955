package org.benchleaf.search.fit;

import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Reason;

/// A reason as one small number: 0 to 999 for missed (how near, in thousandths), then unknown, then met, by
/// how well in hundredths.
///
/// Columns hold outcomes where plants by the hundred thousand are ranked; the weights are applied by the same
/// methods there and in [FitJudge#fit].
public final class Outcome {
    public static final int UNKNOWN = 1000;
    public static final int MET = 1001;

    /// A fact not known counts half as much as one met.
    private static final int HALF = 500;

    private Outcome() {}

    /// @param facts what the reason was judged by
    public static int of(Reason reason, Facts facts) {
        return switch (reason) {
            case Reason.Met met -> MET + HowWell.hundredths(met.wish(), facts);
            case Reason.Unknown unknown -> UNKNOWN;
            case Reason.Missed missed -> missed(Nearness.degree(missed));
        };
    }

    /// The outcome of so many free plants against a count asked for.
    public static int ofCount(int free, int asked) {
        return free >= asked ? MET : missed(Nearness.ofCount(free, asked));
    }

    /// The outcome of a price, unknown when absent, against the most to be paid; both in cents or the like.
    public static int ofPrice(long price, long most) {
        return price <= most ? MET : missed(Nearness.ofPrice(price, most));
    }

    public static boolean isMet(int outcome) {
        return outcome >= MET;
    }

    private static int missed(double degree) {
        return Math.clamp((long) (degree * 1000), 0, 999);
    }

    public static boolean isMissed(int outcome) {
        return outcome < UNKNOWN;
    }

    /// What a wish of this weight adds to the weight met, in thousandths.
    public static int met(int outcome, double weight) {
        return isMet(outcome) ? (int) Math.round(weight * 1000) : 0;
    }

    /// What a wish of this weight adds to nearness, in thousandths: one that is met as well as can be adds a tenth,
    /// which brings a plant first among equals and never outweighs a wish. Ours, no source.
    public static int near(int outcome, double weight) {
        int degree = isMet(outcome) ? outcome - MET : outcome == UNKNOWN ? HALF : outcome;
        return (int) Math.round(weight * degree);
    }
}
