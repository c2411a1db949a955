package org.benchleaf.search;

import java.util.Set;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;

/// One question to the search.
///
/// @param need the wishes, at most [#MOST_WISHES]
/// @param words free words that the names of the plant must hold (the last may be unfinished); may be empty
/// @param now the week in which "in stock" is meant
/// @param skip how many of the best answers to leave out, 0 or more: earlier pages
/// @param limit how many to give, 1 to 1000
/// @param facets what to count
public record NeedQuery(Need need, String words, YearWeek now, int skip, int limit, Set<Facet> facets) {
    public static final int MOST_WISHES = 31;

    public NeedQuery {
        words = words.strip();
        facets = Set.copyOf(facets);
        if (need.wishes().size() > MOST_WISHES) {
            throw new IllegalArgumentException("a need holds at most " + MOST_WISHES + " wishes; got "
                    + need.wishes().size());
        }
        if (skip < 0 || limit < 1 || limit > 1000) {
            throw new IllegalArgumentException(
                    "skip must be 0 or more and limit 1 to 1000; got " + skip + ", " + limit);
        }
    }

    /// The first twenty answers to a need.
    public static NeedQuery of(Need need, YearWeek now) {
        return new NeedQuery(need, "", now, 0, 20);
    }

    /// With the usual facets.
    public NeedQuery(Need need, String words, YearWeek now, int skip, int limit) {
        this(need, words, now, skip, limit, Facet.USUAL);
    }

    public NeedQuery counting(Set<Facet> others) {
        return new NeedQuery(need, words, now, skip, limit, others);
    }
}
