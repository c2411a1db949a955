package org.benchleaf.search.need;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.rule.Destination;

/// Reads what a customer says into wishes, by the grammar in `docs/need-queries.md`: at each word the kind of
/// phrase that takes the most words wins. Holds no state and may be shared between threads.
public final class NeedReader {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{Nd}#$%&+'.]+|.");

    /// Longer texts are no needs; what comes after is listed as not understood.
    private static final int LONGEST = 2000;

    /// Stop words between `not` and what is not wanted.
    private static final int MOST_BETWEEN = 3;

    private final Vocabulary vocabulary;
    private final Pattern without;
    private final WeekPhrases weeks;
    private final ShipPhrases shipping;
    private final List<PhraseReader> readers;

    public NeedReader(Vocabulary vocabulary) {
        this(vocabulary, Optional.empty(), PostalZones.NONE);
    }

    /// @param home where the shop ships from, for sale rules
    public NeedReader(Vocabulary vocabulary, Optional<Destination> home) {
        this(vocabulary, home, PostalZones.NONE);
    }

    /// @param home where the shop ships from, for sale rules
    /// @param zones the zone of each postal code, from the shop's table
    public NeedReader(Vocabulary vocabulary, Optional<Destination> home, PostalZones zones) {
        this.shipping = new ShipPhrases(vocabulary, home);
        this.vocabulary = vocabulary;
        this.without = Pattern.compile(vocabulary.any("without") + "\\s+");
        this.weeks = new WeekPhrases(vocabulary);
        // of two that take as many words, the first wins
        readers = List.of(
                new ZonePhrases(vocabulary),
                new PostalPhrases(vocabulary, zones),
                new SiteNumberPhrases(vocabulary),
                new PricePhrases(vocabulary),
                new SizePhrases(vocabulary),
                new LengthPhrases(vocabulary),
                new NativePhrases(vocabulary),
                new SafePhrases(vocabulary),
                new WordPhrases(vocabulary),
                new GenusPhrases(vocabulary),
                new SeasonPhrases(vocabulary));
    }

    /// Reads a sentence; never fails, for what is not understood is listed.
    ///
    /// @param sentence as typed or dictated
    /// @param today the day from which dates without a year are counted
    public NeedReading read(String sentence, LocalDate today) {
        String text = sentence.strip();
        Sentence plain = Sentence.of(text.length() > LONGEST ? text.substring(0, LONGEST) : text);
        List<PhraseReader> all = new ArrayList<>(readers);
        all.add(weeks.on(today));
        all.add(shipping.on(today));
        NeedDraft draft = new NeedDraft();
        int at = plain.skipBlanks(0);
        while (at < plain.plain().length()) {
            int from = at;
            // a phrase about which the catalog has no fact stays whole: `low maintenance` is not low
            Optional<Sentence.Phrase> noFact = plain.phrase(vocabulary, "no fact", from);
            Optional<Taken> taken = longest(all, plain, from);
            if (noFact.isPresent() && noFact.get().end() > taken.map(Taken::end).orElse(from)) {
                at = noFact.get().end();
                draft.breakOff();
                draft.leave(plain.words(from, at));
                draft.breakOff();
            } else if (taken.isPresent()) {
                at = taken.get().end();
                draft.take(plain.words(from, at), taken.get());
            } else if (plain.phrase(vocabulary, "puts up with", from).isPresent()) {
                // `doesn't mind clay` is no `not`
                at = plain.phrase(vocabulary, "puts up with", from)
                        .orElseThrow()
                        .end();
                draft.breakOff();
            } else {
                Optional<Unwanted> unwanted = unwanted(all, plain, from);
                at = unwanted.isPresent() ? take(plain, from, unwanted.get(), draft) : skip(plain, from, draft);
            }
            at = plain.skipBlanks(at);
        }
        if (text.length() > LONGEST) {
            draft.breakOff();
            draft.leave(text.substring(LONGEST));
        }
        return draft.reading();
    }

    /// What follows a `not`, when it is a wish: it must not be taken as one.
    private Optional<Unwanted> unwanted(List<PhraseReader> readers, Sentence sentence, int at) {
        Optional<Matcher> not = sentence.match(without, at);
        if (not.isEmpty()) {
            return Optional.empty();
        }
        int next = not.get().end();
        // `won't drop fruit`: between such words and what is not wanted may stand a verb
        boolean verb =
                vocabulary.meaning("never does", not.get().group().strip()).isPresent();
        Optional<Taken> taken = longest(readers, sentence, next);
        for (int words = 0; taken.isEmpty() && words < MOST_BETWEEN; words++) {
            Matcher word =
                    WORD.matcher(sentence.plain()).region(next, sentence.plain().length());
            boolean passes = word.lookingAt()
                    && (vocabulary.meaning("stop", word.group()).isPresent() || verb && isWord(word.group()));
            if (!passes) {
                return Optional.empty();
            }
            verb &= vocabulary.meaning("stop", word.group()).isPresent();
            next = sentence.skipBlanks(word.end());
            taken = longest(readers, sentence, next);
        }
        return taken.filter(found -> !found.wishes().isEmpty())
                .map(found -> new Unwanted(found.end(), Opposite.of(found.wishes())));
    }

    private static boolean isWord(String text) {
        return Character.isLetter(text.charAt(0));
    }

    private static int take(Sentence sentence, int from, Unwanted unwanted, NeedDraft draft) {
        String words = sentence.words(from, unwanted.end());
        if (unwanted.instead().isPresent()) {
            draft.take(words, Taken.of(unwanted.end(), unwanted.instead().get()));
        } else {
            draft.breakOff();
            draft.leave(words);
            draft.breakOff();
        }
        return unwanted.end();
    }

    /// Words that rule something out.
    ///
    /// @param end where they end
    /// @param instead the wish for all else; empty when there is none
    private record Unwanted(int end, Optional<Wish> instead) {}

    private static Optional<Taken> longest(List<PhraseReader> readers, Sentence sentence, int at) {
        Optional<Taken> best = Optional.empty();
        for (PhraseReader reader : readers) {
            Optional<Taken> taken = reader.read(sentence, at);
            if (taken.isPresent() && taken.get().end() > best.map(Taken::end).orElse(at)) {
                best = taken;
            }
        }
        return best;
    }

    /// Passes over one word: a stop word quietly, another as not understood.
    private int skip(Sentence sentence, int at, NeedDraft draft) {
        Matcher word =
                WORD.matcher(sentence.plain()).region(at, sentence.plain().length());
        if (!word.lookingAt()) {
            return at + 1;
        }
        String text = word.group().replaceAll("[.']+$", "");
        if (text.isEmpty() || !text.matches(".*[\\p{L}\\p{Nd}#$%].*")) {
            draft.breakOff();
        } else if (vocabulary.meaning("stop", text).isPresent()) {
            draft.breakOff();
        } else {
            draft.leave(sentence.words(at, at + text.length()));
        }
        return word.end();
    }
}
