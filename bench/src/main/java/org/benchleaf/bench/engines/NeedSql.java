package org.benchleaf.bench.engines;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Season;

/// A need as three statements: the best twenty, how many are ranked and meet all, and how many of each kind
/// miss nothing. They say neither why nor what to give up.
record NeedSql(String best, String counts, String kinds) {
    static NeedSql of(Need need) {
        List<String> fixed = new ArrayList<>();
        List<String> met = new ArrayList<>();
        List<String> missed = new ArrayList<>();
        for (WeighedWish weighed : need.wishes()) {
            String condition = condition(weighed.wish());
            met.add("case when " + condition + " then 1 else 0 end");
            if (weighed.fixed()) {
                fixed.add("not coalesce(not (" + condition + "), false)");
            } else {
                missed.add("case when not (" + condition + ") then 1 else 0 end");
            }
        }
        String where = fixed.isEmpty() ? "" : " where " + String.join(" and ", fixed);
        String score = String.join(" + ", met);
        String misses = missed.isEmpty() ? "0" : String.join(" + ", missed);
        return new NeedSql(
                "select id, " + score + " as met from items" + where + " order by met desc, name limit 20",
                "select count(*), sum(case when " + score + " = " + met.size() + " then 1 else 0 end) from items"
                        + where,
                "select form, count(*) from items" + (where.isEmpty() ? " where " : where + " and ") + misses
                        + " = 0 group by form");
    }

    private static String condition(Wish wish) {
        return switch (wish) {
            case Wish.HardyIn(var zone) -> "zmin <= " + zone.half() + " and zmax >= " + zone.half();
            case Wish.GrowsIn(var light) -> "(light & " + WideRows.bits(Set.of(light)) + ") <> 0";
            case Wish.NoTallerThan(int cm) -> "hmax <= " + (int) (cm * 1.05);
            case Wish.OfForm(var forms) -> "(form & " + WideRows.bits(forms) + ") <> 0";
            case Wish.OfFoliage(var foliage) -> "(foliage & " + WideRows.bits(foliage) + ") <> 0";
            case Wish.Shows shows when shows.season() == Season.FALL_COLOR -> "fall > 0";
            case Wish.Shows shows ->
                "(bloom & " + shows.months().orElseThrow().bits() + ") <> 0 and color = "
                        + shows.color().orElseThrow().ordinal();
            case Wish.LikesSoil(var moisture) -> "(soil & " + WideRows.bits(Set.of(moisture)) + ") <> 0";
            case Wish.LeftAloneBy browser -> "deer <= 1";
            case Wish.NativeTo(var region) ->
                "states like '% " + region.orElseThrow().code() + " %'";
            case Wish.ServesAs(var use) -> "(uses & " + WideRows.bits(Set.of(use)) + ") <> 0";
            case Wish.InStock stock -> "free3 >= " + stock.count();
            default -> throw new IllegalArgumentException("not among the benchmark's wishes: " + wish);
        };
    }
}
