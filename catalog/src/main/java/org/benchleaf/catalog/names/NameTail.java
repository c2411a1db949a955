package org.benchleaf.catalog.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/// What follows the Latin part of a name: authors, Group, cultivar, trade designation, marks, remarks.
final class NameTail {
    private static final Set<String> GROUP = Set.of("Group", "group", "Gp", "Gp.", "Grp", "Grp.", "GROUP");
    private static final Set<String> GREX = Set.of("gx", "gx.", "grex", "GREX");
    private static final Set<String> CV = Set.of("cv.", "cv", "CV.", "cvs.");

    private final NameParts parts;
    private final List<NameNote> notes;
    private final boolean capitals;
    private boolean authorsSure;
    private boolean afterCv;

    NameTail(NameParts parts, List<NameNote> notes, boolean capitals) {
        this.parts = parts;
        this.notes = notes;
        this.capitals = capitals;
    }

    /// Takes one piece of the text.
    ///
    /// @return the place after it
    int take(List<Token> tokens, int at) {
        Token token = tokens.get(at);
        switch (token.kind()) {
            case QUOTED -> quoted(token, at + 1 < tokens.size() && isTradeMark(tokens.get(at + 1)));
            case MARK -> notes.add(new NameNote(NameNote.Kind.MARK, token.text()));
            case SQUARE -> notes.add(new NameNote(NameNote.Kind.PARENTS, token.written()));
            case ROUND -> round(token, tokens, at + 1);
            case WORD -> {
                return words(tokens, at);
            }
            case HYBRID, GRAFT -> parts.leave(token.written());
        }
        return at + 1;
    }

    /// Whether a word is a sign of cultivated names and so no epithet: `cv.`, `gx`, Group.
    static boolean isKeyword(String word) {
        return CV.contains(word) || GREX.contains(word) || GROUP.contains(word);
    }

    private void quoted(Token token, boolean markFollows) {
        String epithet = token.text();
        if (epithet.chars().anyMatch(c -> Marks.SIGNS.indexOf(c) >= 0)) {
            String bare = epithet.replaceAll("[" + Marks.SIGNS + "]", "").strip();
            notes.add(new NameNote(NameNote.Kind.TRADE_IN_QUOTES, token.written()));
            trade(bare, token.written());
            return;
        }
        if (parts.cultivar.isPresent()) {
            parts.leave(token.written());
            return;
        }
        String bare = epithet.replaceAll("[,;:]+$", "");
        bare = bare.matches(".*\\p{L}{4}\\.") ? bare.substring(0, bare.length() - 1) : bare;
        if (!bare.equals(epithet)) {
            notes.add(new NameNote(NameNote.Kind.PUNCTUATION, epithet.substring(bare.length())));
        }
        if (bare.isBlank()) {
            parts.leave(token.written());
            return;
        }
        // a code such as SB 108 is written so
        boolean code = bare.chars().anyMatch(Character::isDigit);
        boolean retyped = Capitals.only(bare) && (capitals || bare.indexOf(' ') > 0 && !code);
        if (retyped && !capitals) {
            notes.add(new NameNote(NameNote.Kind.CAPITALS, token.written()));
        }
        if (markFollows) {
            // a mark outside the quotes belongs to a name that is no cultivar epithet, yet the quotes say it is one
            notes.add(new NameNote(NameNote.Kind.TRADE_IN_QUOTES, token.written()));
        }
        parts.cultivar = Optional.of(retyped ? Capitals.titled(bare) : bare);
    }

    private void round(Token token, List<Token> tokens, int next) {
        List<String> words = List.of(token.text().split(" "));
        String last = words.get(words.size() - 1);
        if (words.size() > 1 && GROUP.contains(last)) {
            group(String.join(" ", words.subList(0, words.size() - 1)), token.written());
            return;
        }
        boolean all = Authors.leading(words, false) == words.size();
        boolean wordFollows = next < tokens.size()
                && tokens.get(next).is(Token.Kind.WORD)
                && Capitals.starts(words.get(0))
                && Capitals.starts(tokens.get(next).text());
        if (!parts.isCultivated() && (all || wordFollows && words.size() == 1)) {
            notes.add(new NameNote(NameNote.Kind.AUTHORS, token.written()));
            authorsSure = true;
        } else {
            parts.leave(token.written());
        }
    }

    private int words(List<Token> tokens, int from) {
        if (CV.contains(tokens.get(from).text())) {
            notes.add(new NameNote(NameNote.Kind.CV, tokens.get(from).text()));
            afterCv = true;
            return from + 1;
        }
        List<String> run = new ArrayList<>();
        int at = from;
        while (at < tokens.size() && tokens.get(at).is(Token.Kind.WORD) && !endsRun(tokens, at, run.isEmpty())) {
            run.add(tokens.get(at++).text());
        }
        if (at < tokens.size()
                && tokens.get(at).is(Token.Kind.WORD)
                && GROUP.contains(tokens.get(at).text())) {
            group(String.join(" ", run), String.join(" ", run) + " Group");
            return at + 1;
        }
        if (at < tokens.size()
                && tokens.get(at).is(Token.Kind.WORD)
                && GREX.contains(tokens.get(at).text())) {
            String grex = (String.join(" ", run) + " " + tokens.get(at).text()).strip();
            notes.add(new NameNote(NameNote.Kind.GREX, grex));
            parts.leave(grex);
            return at + 1;
        }
        boolean rankFollows = at < tokens.size()
                && tokens.get(at).is(Token.Kind.WORD)
                && Ranks.of(tokens.get(at).text()).isPresent();
        boolean markFollows = at < tokens.size() && isTradeMark(tokens.get(at));
        run(run, rankFollows, markFollows);
        return at;
    }

    /// A rank with its epithet, `cv.`, Group and grex end a run of words; the first word is always taken.
    private boolean endsRun(List<Token> tokens, int at, boolean first) {
        String word = tokens.get(at).text();
        if (GROUP.contains(word) || GREX.contains(word)) {
            return true;
        }
        if (first) {
            return false;
        }
        boolean rank = Ranks.of(word).isPresent()
                && at + 1 < tokens.size()
                && tokens.get(at + 1).is(Token.Kind.WORD)
                && NameParts.EPITHET
                        .matcher(
                                capitals
                                        ? tokens.get(at + 1).text().toLowerCase(Locale.ROOT)
                                        : tokens.get(at + 1).text())
                        .matches()
                && !Set.of("ex", "et", "in", "non", "de", "bis")
                        .contains(tokens.get(at + 1).text());
        return rank || CV.contains(word);
    }

    private void run(List<String> run, boolean rankFollows, boolean markFollows) {
        int authors = afterCv || parts.isCultivated() ? 0 : Authors.leading(run, authorsSure || rankFollows);
        authorsSure = false;
        if (authors > 0) {
            notes.add(new NameNote(NameNote.Kind.AUTHORS, String.join(" ", run.subList(0, authors))));
        }
        List<String> left = run.subList(authors, run.size());
        if (left.isEmpty()) {
            return;
        }
        if (markFollows && left.size() > 1 && parts.species.isPresent() && epithetBeforeName(left)) {
            notes.add(new NameNote(NameNote.Kind.MISSING_RANK, left.get(0)));
            parts.leave(left.get(0));
            left = left.subList(1, left.size());
        }
        String words = String.join(" ", left);
        boolean inCapitals = !capitals && left.stream().anyMatch(Capitals::only) && Capitals.only(words);
        if (markFollows || inCapitals && !afterCv || capitals && parts.cultivar.isPresent()) {
            trade(words, words);
        } else if (parts.cultivar.isEmpty() && (afterCv || capitals || Capitals.starts(left.get(0)))) {
            String bare = withoutLostQuote(NameWalk.withoutPunctuation(words));
            if (!afterCv) {
                notes.add(new NameNote(NameNote.Kind.MISSING_QUOTES, words));
            }
            boolean named = bare.codePoints().anyMatch(Character::isLetter);
            if (named) {
                parts.cultivar = Optional.of(Capitals.only(bare) && capitals ? Capitals.titled(bare) : bare);
            } else {
                parts.leave(words);
            }
        } else {
            if (left.size() == 1
                    && parts.species.isPresent()
                    && NameParts.EPITHET.matcher(words).matches()) {
                notes.add(new NameNote(NameNote.Kind.MISSING_RANK, words));
            }
            parts.leave(words);
        }
        afterCv = false;
    }

    private static boolean epithetBeforeName(List<String> words) {
        return NameParts.EPITHET.matcher(words.get(0)).matches() && Capitals.starts(words.get(1));
    }

    /// `Limelight'`: a quote that was never opened.
    private static String withoutLostQuote(String name) {
        return name.matches(".*[^s\\s]['’\"]") ? name.substring(0, name.length() - 1) : name;
    }

    private void group(String name, String written) {
        if (name.isBlank() || parts.group.isPresent()) {
            parts.leave(written.strip());
        } else {
            parts.group = Optional.of(capitals ? Capitals.titled(name) : name);
        }
    }

    private void trade(String name, String written) {
        if (parts.trade.isPresent() || name.isBlank()) {
            parts.leave(written);
        } else {
            parts.trade = Optional.of(Capitals.only(name) ? Capitals.titled(name) : name);
        }
    }

    private static boolean isTradeMark(Token token) {
        return token.is(Token.Kind.MARK) && Marks.isOfTrade(token.text());
    }
}
