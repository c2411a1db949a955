package org.benchleaf.content;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;

/// All words of one language by their keys, read from `wording/*_LANGUAGE.properties`.
final class Words {
    /// What customers read on paper; a language has all of it or is none of ours.
    private static final List<String> ON_PAPER = List.of("terms", "colors", "sheet", "documents");

    /// What the shop itself reads; word by word English where nobody has put it into a language yet.
    private static final List<String> ON_SCREEN = List.of(
            "problems", "wishes", "web", "catalog", "app", "rules", "stock", "substitutes", "lists", "walk", "desk");

    private final Locale language;
    private final Map<String, String> patterns;

    private Words(Locale language, Map<String, String> patterns) {
        this.language = language;
        this.patterns = Map.copyOf(patterns);
    }

    /// @throws MissingContent when the pack lacks the language
    static Words read(ContentPack content, Locale language) {
        Map<String, String> patterns = new HashMap<>();
        for (String file : ON_SCREEN) {
            read(content.text(key(file, Locale.ENGLISH)), patterns);
            if (content.find(key(file, language)).isPresent()) {
                read(content.text(key(file, language)), patterns);
            }
        }
        for (String file : ON_PAPER) {
            read(content.text(key(file, language)), patterns);
        }
        return new Words(language, patterns);
    }

    /// Languages of which all words of paper are there.
    static List<String> paperLanguages(ContentPack content) {
        return Stream.of(Locale.getISOLanguages())
                .filter(language -> ON_PAPER.stream()
                        .allMatch(file ->
                                content.find(key(file, Locale.of(language))).isPresent()))
                .toList();
    }

    private static String key(String file, Locale language) {
        return "wording/" + file + "_" + language.getLanguage() + ".properties";
    }

    private static void read(String text, Map<String, String> patterns) {
        Properties read = new Properties();
        try {
            read.load(new StringReader(text));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        read.stringPropertyNames().forEach(name -> patterns.put(name, read.getProperty(name)));
    }

    Locale language() {
        return language;
    }

    Set<String> keys() {
        return patterns.keySet();
    }

    /// Empty when there is no such word.
    Optional<String> find(String key) {
        return Optional.ofNullable(patterns.get(key));
    }

    /// @throws MissingContent when there is no such word
    String text(String key) {
        return find(key)
                .orElseThrow(() -> new MissingContent("word " + key, "the " + language.getLanguage() + " wording"));
    }

    /// A pattern with values in the places of their names. `{count?plant|plants}` is the first word when the
    /// count is one, else the second; French counts none as one too.
    ///
    /// @param key of the pattern, for messages
    /// @throws MissingContent when it wants a value that is not given
    String fill(String key, String pattern, Map<String, String> values) {
        StringBuilder filled = new StringBuilder();
        int from = 0;
        for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', from)) {
            int close = pattern.indexOf('}', open);
            if (close < 0) {
                break;
            }
            String place = pattern.substring(open + 1, close);
            int choice = place.indexOf('?');
            String name = choice < 0 ? place : place.substring(0, choice);
            String value = values.get(name);
            if (value == null) {
                throw new MissingContent("value {" + name + "} of word " + key, "what was given to be worded");
            }
            filled.append(pattern, from, open)
                    .append(choice < 0 ? value : oneOrMany(key, place.substring(choice + 1), value));
            from = close + 1;
        }
        return filled.append(pattern.substring(from)).toString();
    }

    private String oneOrMany(String key, String words, String count) {
        int bar = words.indexOf('|');
        if (bar < 0) {
            throw new MissingContent("the word for many in " + words + " of word " + key, "the wording");
        }
        boolean one = count.equals("1") || count.equals("0") && language.equals(Locale.FRENCH);
        return one ? words.substring(0, bar) : words.substring(bar + 1);
    }
}
