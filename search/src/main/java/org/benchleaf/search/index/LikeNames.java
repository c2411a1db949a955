package org.benchleaf.search.index;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/// Proposes plants whose names hold words spelt or sounding like those said: the more of the letters said
/// are found in a plant's names, and the nearer, the better. What it proposes is compared name by name
/// elsewhere.
final class LikeNames {
    /// Worth of a letter found as said.
    private static final int LETTER = 10;
    /// Shares of a word are tried from this length on: `smokebush` may be two words.
    private static final int SHORTEST_OF_TWO = 6;

    private static final int SHORTEST_HALF = 3;

    /// So many words that sound nearly alike are enough.
    private static final int ENOUGH = 24;
    /// A word of this length that names have as it was said is taken as heard well, alone, as one of two,
    /// of more.
    private static final int[] LONG_ENOUGH = {5, 8, 8, 8, 8};

    private final SaidNames said;
    private final boolean bySound;
    /// The length of each word said that names have as it was said; 0 for the others.
    private final int[] known;

    /// @param segments all of the index: which words were heard well must not depend on how it lies in parts
    /// @param bySound by what is heard; when not, only by what is spelt nearly so
    LikeNames(SaidNames said, boolean bySound, List<Segment> segments) throws IOException {
        this.said = said;
        this.bySound = bySound;
        List<SaidWords> parts = said.parts();
        this.known = new int[parts.isEmpty() ? 0 : parts.getLast().first() + 1];
        for (Segment segment : segments) {
            markKnown(segment.words().get());
        }
    }

    /// The best documents of a segment.
    TopPlants of(Segment segment, int limit) throws IOException {
        SegmentWords words = segment.words().get();
        short[] worth = new short[segment.size()];
        byte[] counted = new byte[segment.size()];
        byte turn = 0;
        for (SaidWords part : said.parts()) {
            turn++;
            boolean heard = longest(part) >= LONG_ENOUGH[part.count() - 1];
            for (Alike alike : alike(words, part, heard)) {
                for (int at = words.firstDoc()[alike.word()]; at < words.firstDoc()[alike.word() + 1]; at++) {
                    int doc = words.docs()[at];
                    if (counted[doc] != turn) {
                        counted[doc] = turn;
                        worth[doc] += (short) alike.worth();
                    }
                }
            }
        }
        TopPlants top = new TopPlants(limit);
        for (int doc = 0; doc < worth.length; doc++) {
            if (worth[doc] > 0 && worth[doc] >= top.least() && segment.isLive(doc)) {
                top.offer(worth[doc], segment.order()[doc]);
            }
        }
        return top;
    }

    private void markKnown(SegmentWords words) {
        for (SaidWords part : said.parts()) {
            if (part.count() == 1) {
                words.spelt()
                        .spelt(
                                part.letters(),
                                0,
                                (word, none) ->
                                        known[part.first()] = part.letters().length());
            }
        }
    }

    private int longest(SaidWords part) {
        return Arrays.stream(known, part.first(), part.first() + part.count())
                .max()
                .orElse(0);
    }

    /// The words of a segment like a part said, those worth most first.
    ///
    /// @param heardWell whether names have a word of the part as it was said
    private List<Alike> alike(SegmentWords words, SaidWords part, boolean heardWell) {
        List<Alike> found = new ArrayList<>(said.spelt(words, part, () -> spelt(words, part, heardWell)));
        if (bySound && !heardWell) {
            bySound(words, part, part.letters().length() * LETTER, found.isEmpty() ? ENOUGH : 1, found);
        }
        if (part.count() == 1 && part.letters().length() >= SHORTEST_OF_TWO) {
            words.spelt()
                    .halves(
                            part.letters(),
                            SHORTEST_HALF,
                            (word, letters) -> found.add(new Alike(word, letters * LETTER)));
        }
        found.sort(Comparator.comparingInt(Alike::worth).reversed());
        return found;
    }

    private static List<Alike> spelt(SegmentWords words, SaidWords part, boolean heardWell) {
        List<Alike> found = new ArrayList<>();
        if (part.count() == 1 || part.count() == 2 && !heardWell) {
            int full = part.letters().length() * LETTER;
            words.spelt()
                    .spelt(
                            part.letters(),
                            part.edits(heardWell ? 1 : 2),
                            (word, cost) -> found.add(new Alike(word, full - cost * LETTER)));
        }
        return found;
    }

    /// Words heard nearly so; those farther off are looked for only where few are near.
    private static void bySound(SegmentWords words, SaidWords part, int full, int enough, List<Alike> found) {
        int most = part.mostUnlike();
        List<Alike> near = new ArrayList<>();
        for (int within = most / 2; within <= most && near.size() < enough; within += most - most / 2) {
            near.clear();
            words.heard().sounding(part.sounds(), within, (sound, cost) -> {
                for (int at = words.firstOfSound()[sound]; at < words.firstOfSound()[sound + 1]; at++) {
                    near.add(new Alike(words.bySound()[at], full - full * cost / (most + most / 2 + 2)));
                }
            });
            if (most == 0) {
                break;
            }
        }
        found.addAll(near);
    }

    /// A word of the segment and what it is worth to find it.
    record Alike(int word, int worth) {}
}
