package org.benchleaf.search.fit;

import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.need.Reason;
import org.benchleaf.shared.need.Wish;

/// Whether somebody holds a right in a plant, by what the catalog says under rights. Silence about a cultivar
/// proves nothing; a wild species cannot be patented (35 U.S.C. 161: cultivated varieties alone can) and its
/// name is free.
public final class RightsJudge {
    private static final Pattern PATENT =
            Pattern.compile("\\bPP ?\\d|\\bPPAF\\b|\\bPVP|\\bPBR\\b|\\bCOPF\\b|patent", Pattern.CASE_INSENSITIVE);

    private static final Pattern MARK = Pattern.compile("[®™]|trade ?mark|\\bmark\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern NO_MORE = Pattern.compile("expired|lapsed", Pattern.CASE_INSENSITIVE);

    private static final Pattern NONE = Pattern.compile("none|no rights|free", Pattern.CASE_INSENSITIVE);

    private RightsJudge() {}

    static Reason judge(Wish.FreeOf wish, Facts facts, BotanicalName name) {
        Optional<Fact<String>> fact = facts.fact(Attributes.RIGHTS);
        if (fact.isEmpty()) {
            return isWild(name) ? new Reason.Met(wish, Reason.Seen.own(name.toString())) : new Reason.Unknown(wish);
        }
        String text = fact.get().value();
        boolean named = (wish.right() == Wish.Right.PATENT ? PATENT : MARK)
                .matcher(text)
                .find();
        if (named && !NO_MORE.matcher(text).find()) {
            return new Reason.Missed(wish, FitJudge.seen(fact.get()), new Reason.Shortfall.NotSo());
        }
        return named || NONE.matcher(text).matches()
                ? new Reason.Met(wish, FitJudge.seen(fact.get()))
                : new Reason.Unknown(wish);
    }

    /// A species without a cultivar or a selling name.
    public static boolean isWild(BotanicalName name) {
        return name.species().isPresent()
                && name.cultivar().isEmpty()
                && name.tradeDesignation().isEmpty();
    }
}
