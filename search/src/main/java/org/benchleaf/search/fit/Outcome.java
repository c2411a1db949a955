package org.benchleaf.search.fit;

import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.need.Counting;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.WeighedWish;

/// A reason as one small number: 0 to 999 for missed (how near, in thousandths), then unknown, then met, by
/// how well in hundredths.
///
/// Columns hold outcomes where plants by the hundred thousand are ranked; the weights are applied by the same
/// methods there and in [FitJudge#fit].
public final class Outcome {
    public static final int UNKNOWN = 1000;
    public static final int MET = 1001;
    /// Behind the last.
    public static final int END = MET + HowWell.BEST + 1;

    /// A fact not known counts half as much as one met.
    private static final int HALF = 500;

    /// Where wishes count by degree: less than what will just do.
    private static final int NOT_KNOWN = 300;

    private static final int TENTH = 10;

    private Outcome() {}

    /// @param facts what the reason was judged by
    public static int of(Reason reason, Facts facts) {
        return switch (reason) {
            case Reason.Met met -> MET + HowWell.hundredths(met, facts);
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

    public static boolean isMissed(int outcome) {
        return outcome < UNKNOWN;
    }

    /// What a wish adds to the weight met, in thousandths. One that counts by degree adds nothing here: it orders
    /// what answers.
    public static int met(int outcome, WeighedWish wish) {
        return isMet(outcome) && wish.counting() == Counting.WHOLE ? (int) Math.round(wish.weight() * 1000) : 0;
    }

    /// What a wish adds to nearness, in thousandths: one that is met as well as can be adds a tenth, which brings a
    /// plant first among equals and never outweighs a wish. One that counts by degree adds a tenth as well at most,
    /// and less the less it is met. Ours, no source.
    public static int near(int outcome, WeighedWish wish) {
        double weight = wish.weight();
        return (int) Math.round(
                switch (wish.counting()) {
                    case WHOLE -> weight * (isMet(outcome) ? outcome - MET : isMissed(outcome) ? outcome : HALF);
                    case BY_DEGREE -> weight * byDegree(outcome, HowWell.least(wish.wish())) / TENTH;
                });
    }

    /// @param least what just meeting the wish counts
    /// @return 0 to 1000; what misses it by little counts almost as much as what just meets it, and soon much less
    private static double byDegree(int outcome, int least) {
        if (isMet(outcome)) {
            return least + (1000 - least) * (outcome - MET) / (double) HowWell.BEST;
        }
        return isMissed(outcome) ? least * Math.pow(outcome / 1000.0, 2) : NOT_KNOWN;
    }

    private static int missed(double degree) {
        return Math.clamp((long) (degree * 1000), 0, 999);
    }
}
