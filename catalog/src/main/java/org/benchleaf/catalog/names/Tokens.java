package org.benchleaf.catalog.names;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/// Cuts a name's text into words, quoted epithets, brackets and signs; one pass, no looking back.
final class Tokens {
    private static final Pattern PUNCTUATION = Pattern.compile("[.,;:]+");
    private static final Pattern LAST_STOP = Pattern.compile("[,;.]$");
    private static final String HYBRID_SIGNS = "×✕✖⨯⨉";
    private final String text;
    private final List<NameNote> notes;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Tokens(String text, List<NameNote> notes) {
        this.text = text;
        this.notes = notes;
    }

    /// @param notes receives what was taken otherwise than written
    static List<Token> of(String text, List<NameNote> notes) {
        Tokens tokens = new Tokens(tidy(text), notes);
        while (tokens.at < tokens.text.length()) {
            tokens.next();
        }
        return List.copyOf(tokens.tokens);
    }

    /// One blank between words, composed accents, one kind of hyphen, `''` as the double quote it stands for.
    private static String tidy(String text) {
        StringBuilder tidy = new StringBuilder();
        boolean blank = true;
        for (int c :
                Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().toArray()) {
            boolean space = Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c);
            boolean unseen = c == 0xFEFF || c == 0x200B || c == 0xAD;
            if (unseen || space && blank) {
                continue;
            }
            tidy.appendCodePoint(space ? ' ' : c == '‐' || c == '‑' ? '-' : c);
            blank = space;
        }
        return tidy.toString().strip().replace("''", "\"");
    }

    private void next() {
        char c = text.charAt(at);
        if (c == ' ') {
            at++;
        } else if (c == '[') {
            bracket(Token.Kind.SQUARE, '[', ']');
        } else if (c == '(') {
            bracket(Token.Kind.ROUND, '(', ')');
        } else if (HYBRID_SIGNS.indexOf(c) >= 0) {
            sign(Token.Kind.HYBRID);
        } else if (c == '+') {
            sign(Token.Kind.GRAFT);
        } else if (Marks.SIGNS.indexOf(c) >= 0) {
            sign(Token.Kind.MARK);
        } else if (Quotes.isQuote(c)) {
            quoted();
        } else {
            word();
        }
    }

    private void sign(Token.Kind kind) {
        tokens.add(new Token(kind, text.substring(at, at + 1), text.substring(at, at + 1)));
        at++;
    }

    private void bracket(Token.Kind kind, char open, char close) {
        int depth = 0;
        int end = at;
        while (end < text.length()) {
            char c = text.charAt(end++);
            depth += c == open ? 1 : c == close ? -1 : 0;
            if (depth == 0) {
                break;
            }
        }
        String written = text.substring(at, end);
        String inside = written.substring(1, depth == 0 ? written.length() - 1 : written.length())
                .strip();
        at = end;
        if (kind == Token.Kind.ROUND && Marks.isBracketed(inside)) {
            tokens.add(new Token(Token.Kind.MARK, inside, written));
        } else if (kind == Token.Kind.ROUND && !inside.isEmpty() && Quotes.isQuote(inside.charAt(0))) {
            tokens.addAll(of(inside, notes)); // quoted text: of() meets no bracket first, so this goes one level deep
        } else {
            tokens.add(new Token(kind, inside, written));
        }
    }

    private void quoted() {
        OptionalInt closing = Quotes.closing(text, at);
        int end = closing.orElse(text.length());
        String written = text.substring(at, Math.min(text.length(), end + 1));
        String inside = text.substring(at + 1, end).strip();
        if (closing.isEmpty() && !inside.isEmpty()) {
            notes.add(new NameNote(NameNote.Kind.MISSING_QUOTES, written));
        } else if (!Quotes.isPlain(text.charAt(at))) {
            notes.add(new NameNote(NameNote.Kind.OTHER_QUOTES, written));
        }
        String epithet = inside.replace('’', '\'').replace('‘', '\'');
        tokens.add(new Token(inside.isEmpty() ? Token.Kind.WORD : Token.Kind.QUOTED, epithet, written));
        at = end + 1;
    }

    private void word() {
        int end = at;
        while (end < text.length() && !endsWord(text.charAt(end))) {
            end++;
        }
        String word = text.substring(at, end);
        at = end;
        if (PUNCTUATION.matcher(word).matches()) {
            notes.add(new NameNote(NameNote.Kind.PUNCTUATION, word));
        } else if (word.equals("x") || word.equals("X")) {
            notes.add(new NameNote(NameNote.Kind.LETTER_X, word));
            tokens.add(new Token(Token.Kind.HYBRID, "×", word));
        } else if (tokens.isEmpty() && isNothogenus(word)) {
            notes.add(new NameNote(NameNote.Kind.LETTER_X, word));
            tokens.add(new Token(Token.Kind.HYBRID, "×", "x"));
            tokens.add(Token.word(word.substring(1)));
        } else if (!tokens.isEmpty() && Marks.isMark(LAST_STOP.matcher(word).replaceFirst(""))) {
            mark(word);
        } else {
            tokens.add(Token.word(word));
        }
    }

    /// `xHeucherella`: a small x before a capital.
    private static boolean isNothogenus(String word) {
        return word.length() > 3 && word.charAt(0) == 'x' && Character.isUpperCase(word.charAt(1));
    }

    private void mark(String word) {
        String mark = LAST_STOP.matcher(word).replaceFirst("");
        if (Marks.wantsNumber(mark)) {
            int end = at + 1;
            while (end < text.length() && "#0123456789,".indexOf(text.charAt(end)) >= 0) {
                end++;
            }
            if (end > at + 1) {
                mark += text.substring(at, end);
                at = end;
            }
        }
        tokens.add(new Token(Token.Kind.MARK, mark, mark));
    }

    private static boolean endsWord(char c) {
        return c == ' ' || c == '(' || c == '[' || c == '"' || c == '“' || c == '”' || Marks.SIGNS.indexOf(c) >= 0;
    }
}
