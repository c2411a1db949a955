package org.benchleaf.shared.measure;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.benchleaf.shared.Reading;

/// A set of months of the year; a run may wrap at the year's end, as winter does.
///
/// @param bits bit 0 for January ... bit 11 for December
public record MonthSet(int bits) {
    public static final MonthSet NONE = new MonthSet(0);
    public static final MonthSet ALL = new MonthSet(0xFFF);

    public MonthSet {
        if ((bits & ~0xFFF) != 0) {
            throw new IllegalArgumentException("months are bits 0 to 11; got " + Integer.toBinaryString(bits));
        }
    }

    /// From one month to another, both included, forward through the year's end when `to` lies before `from`.
    public static MonthSet between(Month from, Month to) {
        int bits = 0;
        for (Month month = from; ; month = month.plus(1)) {
            bits |= 1 << month.ordinal();
            if (month == to) {
                return new MonthSet(bits);
            }
        }
    }

    /// Reads `Apr-Jun`, `Nov–Feb`, `4-6`, `May`, `May, Jul-Aug`, `year-round`.
    public static Reading<MonthSet> read(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        if (wanted.equals("year-round") || wanted.equals("all year")) {
            return Reading.of(ALL);
        }
        int bits = 0;
        for (String run : wanted.split("[;,/|]|\\band\\b")) {
            String[] ends = run.strip().split("\\s*(?:-|–|—|\\bto\\b)\\s*");
            if (ends.length == 0) {
                return Reading.refused("months.unknown", text); // a lone dash
            }
            int from = monthOf(ends[0]);
            int to = ends.length == 2 ? monthOf(ends[1]) : from;
            if (from < 0 || to < 0 || ends.length > 2) {
                return Reading.refused("months.unknown", text);
            }
            bits |= between(Month.of(from), Month.of(to)).bits;
        }
        return Reading.of(new MonthSet(bits));
    }

    private static int monthOf(String text) {
        String word = text.strip();
        if (word.matches("\\d{1,2}")) {
            int number = Integer.parseInt(word);
            return number >= 1 && number <= 12 ? number : -1;
        }
        if (word.length() < 3) {
            return -1;
        }
        for (Month month : Month.values()) {
            String name = month.name().toLowerCase(Locale.ROOT);
            if (name.equals(word)
                    || name.substring(0, 3).equals(word.replace(".", ""))
                    || word.equals("sept") && month == Month.SEPTEMBER) {
                return month.getValue();
            }
        }
        return -1;
    }

    public boolean contains(Month month) {
        return (bits & 1 << month.ordinal()) != 0;
    }

    public boolean isEmpty() {
        return bits == 0;
    }

    /// Number of months in the set: 0 to 12.
    public int size() {
        return Integer.bitCount(bits);
    }

    public MonthSet and(MonthSet other) {
        return new MonthSet(bits & other.bits);
    }

    public MonthSet or(MonthSet other) {
        return new MonthSet(bits | other.bits);
    }

    /// The fewest months between any month of this set and any of the other, around the year: 0 to 6.
    ///
    /// @throws IllegalArgumentException when either is empty
    public int monthsApart(MonthSet other) {
        if (isEmpty() || other.isEmpty()) {
            throw new IllegalArgumentException("no distance to an empty set of months");
        }
        int apart = 0;
        int reach = bits;
        while ((reach & other.bits) == 0) {
            reach = reach | reach << 1 & 0xFFF | reach >> 11 | reach >> 1 | (reach & 1) << 11;
            apart++;
        }
        return apart;
    }

    /// The runs of months, first to last; a run over the year's end comes as one.
    public List<List<Month>> runs() {
        if (bits == 0xFFF) {
            return List.of(List.of(Month.JANUARY, Month.DECEMBER));
        }
        List<List<Month>> runs = new ArrayList<>();
        for (Month month : Month.values()) {
            if (contains(month) && !contains(month.minus(1))) {
                Month last = month;
                while (contains(last.plus(1))) {
                    last = last.plus(1);
                }
                runs.add(List.of(month, last));
            }
        }
        return List.copyOf(runs);
    }

    /// `Apr-Jun`, `Nov-Feb`, `May; Jul-Aug`; empty for the empty set.
    @Override
    public String toString() {
        return runs().stream()
                .map(run -> run.get(0) == run.get(1)
                        ? abbreviation(run.get(0))
                        : abbreviation(run.get(0)) + "-" + abbreviation(run.get(1)))
                .collect(Collectors.joining("; "));
    }

    private static String abbreviation(Month month) {
        return month.name().charAt(0) + month.name().substring(1, 3).toLowerCase(Locale.ROOT);
    }
}
