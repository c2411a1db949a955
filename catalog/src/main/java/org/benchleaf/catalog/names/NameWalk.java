package org.benchleaf.catalog.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.name.Epithet;
import org.benchleaf.shared.name.HybridMark;
import org.benchleaf.shared.name.Infraspecific;
import org.benchleaf.shared.name.Rank;

/// One walk over the tokens of a name, genus first; used once.
final class NameWalk {
    private static final Pattern LETTER_X = Pattern.compile("(?<![^\\s])x(?=\\s)");
    private static final Pattern SHORT_GENUS = Pattern.compile("\\p{Lu}\\p{Ll}{0,3}\\.");
    /// `pan.` for paniculata; a full stop that ends a whole epithet ends the text too.
    private static final Pattern SHORT_EPITHET = Pattern.compile("\\p{Ll}{2,6}\\.");
    private static final Set<String> UNNAMED = Set.of(
            "cvs.",
            "cvs",
            "sp.",
            "sp",
            "spp.",
            "spp",
            "species",
            "hybrid",
            "hybrids",
            "mixed",
            "mix",
            "assorted",
            "varieties");
    /// Words after which comes what the name is like, or another name; nothing of it is this name's.
    private static final Set<String> UNSURE = Set.of("cf.", "cf", "aff.", "aff", "and", "or", "with", "not");
    /// `xgrandiflora`: no Latin word starts with x and a consonant but y, and few with x and a vowel.
    private static final Pattern JOINED_X =
            Pattern.compile("x(?:[^aeiouy\\W].+|(?!an|en|er|yl|yr|iph|yp|al|im|ys).{4,})");
    /// Endings that only Latin adjectives and genitives have: a capital before them is a slip.
    private static final Pattern LATIN = Pattern.compile("\\p{Lu}\\p{Ll}+(?:um|us|ii|ensis|ense|ifolia|iflora|oides)");

    private final String text;
    private final List<Token> tokens;
    private final List<NameNote> notes;
    private final Optional<BotanicalName> before;
    private final NameParts parts = new NameParts();
    private final boolean capitals;
    private int at;

    NameWalk(String text, List<Token> tokens, List<NameNote> notes, Optional<BotanicalName> before) {
        this.text = text;
        this.tokens = tokens;
        this.notes = notes;
        this.before = before;
        this.capitals = Capitals.only(LETTER_X.matcher(text).replaceAll(""));
    }

    NameReading read() {
        if (!genus()) {
            return new NameReading.Unread(Problem.of("name.unknown", text));
        }
        species();
        NameTail tail = new NameTail(parts, notes, capitals);
        while (at < tokens.size()) {
            if (!rank() && !formula()) {
                at = tail.take(tokens, at);
            }
        }
        String rest = parts.rest();
        Optional<BotanicalName> name = parts.name();
        return name.isPresent() && rest.isEmpty()
                ? new NameReading.Read(name.get(), notes)
                : new NameReading.Partly(name, name.isPresent() ? rest : text, notes);
    }

    private boolean genus() {
        if (peek(Token.Kind.HYBRID) || peek(Token.Kind.GRAFT)) {
            parts.genusMark = peek(Token.Kind.HYBRID) ? HybridMark.HYBRID : HybridMark.GRAFT;
            at++;
        }
        if (!peek(Token.Kind.WORD)) {
            return false;
        }
        String written = tokens.get(at).text();
        if (SHORT_GENUS.matcher(written).matches()) {
            shortGenus(written);
            at++;
            return true;
        }
        String bare = withoutPunctuation(written);
        String genus = Capitals.capitalised(bare.toLowerCase(Locale.ROOT));
        if (NameParts.GENUS.matcher(bare).matches()) {
            genus = bare;
        } else if (NameParts.GENUS.matcher(genus).matches()
                && (capitals || !Capitals.starts(bare) || Capitals.only(bare))) {
            notes.add(new NameNote(NameNote.Kind.CAPITALS, capitals ? text : bare));
        } else {
            return false;
        }
        parts.genus = genus;
        at++;
        return true;
    }

    private void shortGenus(String written) {
        String start = written.substring(0, written.length() - 1);
        Optional<String> filled = before.map(BotanicalName::genus).filter(genus -> genus.startsWith(start));
        notes.add(new NameNote(NameNote.Kind.SHORT_GENUS, written));
        parts.genus = filled.orElse("");
    }

    private void species() {
        if (peek(Token.Kind.HYBRID) && peekAt(at + 1, Token.Kind.QUOTED)) {
            // "Prunus x 'Okame'": a sign without an epithet says only that the cultivar is a hybrid
            at++;
            return;
        }
        if (peek(Token.Kind.HYBRID) && peekAt(at + 1, Token.Kind.WORD)) {
            Optional<String> epithet = epithet(tokens.get(at + 1).text());
            if (epithet.isPresent()) {
                parts.species = Optional.of(new Epithet(HybridMark.HYBRID, epithet.get()));
                at += 2;
            }
            return;
        }
        if (!peek(Token.Kind.WORD)) {
            return;
        }
        String word = tokens.get(at).text();
        String small = capitals ? word.toLowerCase(Locale.ROOT) : word;
        if (UNNAMED.contains(small) || UNSURE.contains(small)) {
            notes.add(new NameNote(NameNote.Kind.UNNAMED, word));
            parts.leave(word);
            at++;
            while (UNSURE.contains(small) && at < tokens.size()) {
                parts.leave(tokens.get(at++).written());
            }
            return;
        }
        boolean keyword = NameTail.isKeyword(word) || Ranks.of(word).isPresent();
        if (SHORT_EPITHET.matcher(small).matches() && !keyword && at + 1 < tokens.size()) {
            notes.add(new NameNote(NameNote.Kind.SHORT_EPITHET, word));
            parts.leave(word);
            at++;
            return;
        }
        boolean other = NameTail.isKeyword(word) || Ranks.of(word).isPresent() && word.endsWith(".");
        Optional<String> epithet = other ? Optional.empty() : epithet(word);
        if (epithet.isEmpty() && isCapitalSlip(withoutPunctuation(word))) {
            epithet = epithet(word.toLowerCase(Locale.ROOT));
            notes.add(new NameNote(NameNote.Kind.CAPITALS, word));
        }
        epithet.ifPresent(found -> {
            boolean joined = JOINED_X.matcher(found).matches();
            if (joined) {
                notes.add(new NameNote(NameNote.Kind.LETTER_X, found));
            }
            parts.species = Optional.of(
                    joined ? new Epithet(HybridMark.HYBRID, found.substring(1)) : new Epithet(HybridMark.NONE, found));
            at++;
        });
    }

    /// `Acer Rubrum 'October Glory'`, `Acer Rubrum`: a capital by slip, where quotes, a rank or the ending show it.
    private boolean isCapitalSlip(String word) {
        if (capitals || !NameParts.GENUS.matcher(word).matches() || tokens.size() > at + 1 && isGroup(at + 1)) {
            return false;
        }
        boolean epithetFollows = peekAt(at + 1, Token.Kind.QUOTED) || at + 2 < tokens.size() && isRankWord(at + 1);
        return epithetFollows || tokens.size() == at + 1 && LATIN.matcher(word).matches();
    }

    private boolean isGroup(int index) {
        return tokens.get(index).text().equals("Group");
    }

    /// `var. tomentosum`, also after authors; `f.` before a capital is the son of an author.
    private boolean rank() {
        if (parts.species.isEmpty() || parts.isCultivated() || !isRankWord(at)) {
            return false;
        }
        String word = tokens.get(at).text();
        boolean marked = peekAt(at + 1, Token.Kind.HYBRID);
        int place = marked ? at + 2 : at + 1;
        Optional<String> epithet = epithet(tokens.get(place).text());
        Optional<Rank> rank = Ranks.of(word);
        if (epithet.isEmpty() || rank.isEmpty()) {
            return false;
        }
        parts.below.ifPresent(middle -> notes.add(new NameNote(
                NameNote.Kind.MIDDLE_RANK,
                middle.rank().mark() + " " + middle.epithet().text())));
        if (Ranks.ofHybrid(word)) {
            notes.add(new NameNote(NameNote.Kind.HYBRID_RANK, word));
        }
        HybridMark mark = marked || Ranks.ofHybrid(word) ? HybridMark.HYBRID : HybridMark.NONE;
        parts.below = Optional.of(new Infraspecific(rank.get(), new Epithet(mark, epithet.get())));
        at = place + 1;
        return true;
    }

    private boolean isRankWord(int index) {
        if (!peekAt(index, Token.Kind.WORD)
                || Ranks.of(tokens.get(index).text()).isEmpty()) {
            return false;
        }
        int place = peekAt(index + 1, Token.Kind.HYBRID) ? index + 2 : index + 1;
        return peekAt(place, Token.Kind.WORD)
                && epithet(tokens.get(place).text())
                        .filter(word ->
                                !Set.of("ex", "et", "in", "non", "de", "bis").contains(word))
                        .isPresent();
    }

    /// × before another name: a hybrid named by its parents has no name that could be held.
    private boolean formula() {
        if (!peek(Token.Kind.HYBRID)) {
            return false;
        }
        List<String> left = new ArrayList<>();
        while (at < tokens.size()) {
            left.add(tokens.get(at++).written());
        }
        String rest = String.join(" ", left);
        notes.add(new NameNote(NameNote.Kind.FORMULA, rest));
        parts.leave(rest);
        return true;
    }

    private Optional<String> epithet(String word) {
        String bare = withoutPunctuation(word);
        String small = capitals ? bare.toLowerCase(Locale.ROOT) : bare;
        if (!NameParts.EPITHET.matcher(small).matches()) {
            return Optional.empty();
        }
        if (!bare.equals(word)) {
            notes.add(new NameNote(NameNote.Kind.PUNCTUATION, word.substring(bare.length())));
        }
        return Optional.of(small);
    }

    static String withoutPunctuation(String word) {
        int end = word.length();
        while (end > 0 && ".,;:".indexOf(word.charAt(end - 1)) >= 0) {
            end--;
        }
        return word.substring(0, end);
    }

    private boolean peek(Token.Kind kind) {
        return peekAt(at, kind);
    }

    private boolean peekAt(int index, Token.Kind kind) {
        return index < tokens.size() && tokens.get(index).is(kind);
    }
}
