package org.benchleaf.search.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;

/// `hydrangea`, `no boxwood or holly`, `not Norway maple`, `no Rosaceae`: a genus, species or family asked for or ruled
/// out, by its Latin or its usual name. `Under maples` and `something like boxwood` ask for neither.
final class GenusPhrases implements PhraseReader {
    private static final Pattern FAMILY = Pattern.compile("[a-z]{3,}aceae");

    private final Vocabulary words;
    private final Pattern without;
    private final Pattern another;
    private final Optional<Pattern> beneath;
    private final Optional<Pattern> beside;
    private final Optional<Pattern> like;

    GenusPhrases(Vocabulary words) {
        this.words = words;
        without = Pattern.compile(words.any("without") + "\\s+");
        another = Pattern.compile("\\s*(?:/|" + words.any("and") + ")\\s+(?:" + words.any("without") + "\\s+)?");
        beneath = lead(words, "beneath", "(?:" + words.any("old") + "\\s+)?");
        beside = lead(words, "beside", "");
        like = lead(words, "like", "");
    }

    private static Optional<Pattern> lead(Vocabulary words, String section, String more) {
        return words.table(section).isEmpty()
                ? Optional.empty()
                : Optional.of(Pattern.compile(words.any(section) + "\\s+" + more));
    }

    @Override
    public Optional<Taken> read(Sentence sentence, int at) {
        return beneath(sentence, at)
                .or(() -> spoken(sentence, at, beside, "beside-name"))
                .or(() -> spoken(sentence, at, like, "like-name"))
                .or(() -> named(sentence, at));
    }

    /// Dry shade, as roots and crowns of trees make it; the genus is not what is looked for.
    private Optional<Taken> beneath(Sentence sentence, int at) {
        return after(sentence, at, beneath)
                .map(end -> Taken.of(end, new Wish.GrowsIn(Exposure.PART_SHADE), new Wish.LikesSoil(Moisture.DRY))
                        .or(List.of(new Wish.GrowsIn(Exposure.FULL_SHADE), new Wish.LikesSoil(Moisture.DRY)))
                        .with(new Note("under-is-dry-shade", sentence.words(at, end), "")));
    }

    /// A name that is spoken of and not asked for.
    private Optional<Taken> spoken(Sentence sentence, int at, Optional<Pattern> lead, String note) {
        return after(sentence, at, lead)
                .map(end -> Taken.of(end, List.of()).with(new Note(note, sentence.words(at, end), "")));
    }

    /// Where a name ends that follows a lead.
    private Optional<Integer> after(Sentence sentence, int at, Optional<Pattern> lead) {
        return lead.flatMap(pattern -> sentence.match(pattern, at))
                .flatMap(match -> taxon(sentence, match.end()))
                .map(Named::end);
    }

    private Optional<Taken> named(Sentence sentence, int at) {
        Optional<Matcher> no = sentence.match(without, at);
        if (no.isEmpty()) {
            return taxon(sentence, at)
                    .map(found -> instead(sentence, found.end())
                            .map(end -> Taken.of(end, found.unwanted()))
                            .orElseGet(() -> Taken.of(found.end(), found.wanted())));
        }
        List<Wish> wishes = new ArrayList<>();
        int end = at;
        Optional<Named> next = taxon(sentence, no.get().end());
        while (next.isPresent()) {
            wishes.add(next.get().unwanted());
            end = next.get().end();
            next = sentence.match(another, end).flatMap(match -> taxon(sentence, match.end()));
        }
        return wishes.isEmpty() ? Optional.empty() : Optional.of(Taken.of(end, wishes));
    }

    /// `barberry substitute`: where the word ends that asks for something else.
    private Optional<Integer> instead(Sentence sentence, int end) {
        return sentence.phrase(words, "instead", sentence.skipBlanks(end)).map(Sentence.Phrase::end);
    }

    /// The longer of a species and a genus that begin here.
    private Optional<Named> taxon(Sentence sentence, int at) {
        Optional<Named> genus = sentence.phrase(words, "genera", at)
                .map(found -> new Named(
                        found.end(), new Wish.OfGenus(found.meaning()), new Wish.NotOfGenus(found.meaning())));
        Optional<Named> family = family(sentence, at);
        if (family.isPresent()) {
            return family;
        }
        Optional<Named> species = sentence.phrase(words, "species", at).map(found -> {
            int blank = found.meaning().indexOf(' ');
            String of = found.meaning().substring(0, blank);
            String epithet = found.meaning().substring(blank + 1);
            return new Named(found.end(), new Wish.OfSpecies(of, epithet), new Wish.NotOfSpecies(of, epithet));
        });
        boolean longer = species.isPresent()
                && species.get().end() > genus.map(Named::end).orElse(0);
        return longer ? species : genus;
    }

    /// `Rosaceae`, `the rose family`: all names of families end alike.
    private Optional<Named> family(Sentence sentence, int at) {
        return sentence.match(FAMILY, at)
                .map(match -> named(
                        match.end(),
                        Character.toUpperCase(match.group().charAt(0))
                                + match.group().substring(1)))
                .or(() -> sentence.phrase(words, "families", at).map(found -> named(found.end(), found.meaning())));
    }

    private static Named named(int end, String family) {
        return new Named(end, new Wish.OfFamily(family), new Wish.NotOfFamily(family));
    }

    private record Named(int end, Wish wanted, Wish unwanted) {}
}
