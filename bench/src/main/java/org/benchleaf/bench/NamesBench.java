package org.benchleaf.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.benchleaf.search.index.PlantIndex;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.shared.code.PlantKey;

/// Looks up 200 misspelt and misheard names of the first 10,000 plants, and completes 200 beginnings.
final class NamesBench {
    private static final int ASKED = 200;
    private static final int ROUNDS = 4;
    private static final int HEAD = 10_000;
    private static final int FIRST = 10;
    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz";
    private static final String[][] HEARD = {
        {"ph", "f"},
        {"c", "k"},
        {"ae", "e"},
        {"th", "t"},
        {"x", "ks"},
        {"qu", "kw"},
        {"y", "i"},
        {"ia", "ea"},
        {"us", "is"},
        {"um", "em"},
        {"a ", "uh "},
        {"er", "ur"},
        {"z", "s"},
        {"en", "in"},
        {"el", "le"}
    };

    private NamesBench() {}

    static void run(int plants, PrintStream out) throws IOException {
        Path folder = Files.createTempDirectory("benchleaf-names");
        long start = System.nanoTime();
        try (PlantIndex index = PlantIndex.open(folder, new NamesOnly(plants))) {
            long indexed = System.nanoTime();
            NameIndex names = new NameIndex(index);
            names.find("nonesuch", FIRST);
            long first = System.nanoTime();
            List<Asked> asked = asked(Math.min(plants, HEAD));
            Figures like = measure(asked, one -> names.find(one.text(), FIRST));
            Figures begun = measure(asked, one -> names.complete(one.begun(), FIRST));
            long found = asked.stream()
                    .filter(one -> names.find(one.text(), FIRST).stream()
                            .anyMatch(hit -> hit.plant().equals(one.meant())))
                    .count();
            out.printf(
                    Locale.ROOT,
                    "%,d plants: index %.1f s, words %.0f ms, name %s (recall@%d %.3f), completion %s, live heap %d MiB%n",
                    plants,
                    (indexed - start) / 1e9,
                    (first - indexed) / 1e6,
                    like,
                    FIRST,
                    (double) found / asked.size(),
                    begun,
                    Memory.liveMiB());
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder())
                        .forEach(file -> file.toFile().delete());
            }
        }
    }

    private static Figures measure(List<Asked> asked, Consumer<Asked> ask) {
        long[] nanos = new long[asked.size()];
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < nanos.length; i++) {
                long before = System.nanoTime();
                ask.accept(asked.get(i));
                nanos[i] = System.nanoTime() - before;
            }
        }
        return new Figures(nanos);
    }

    private static List<Asked> asked(int plants) {
        SplittableRandom random = new SplittableRandom(20_261_125);
        List<Asked> asked = new ArrayList<>();
        for (int i = 0; i < ASKED; i++) {
            int number = random.nextInt(plants);
            var name = NamesOnly.name(number);
            String whole = (name.genus() + " " + name.cultivar().orElse("")).toLowerCase(Locale.ROOT);
            String text = i % 3 == 0
                    ? typo(whole, random)
                    : i % 3 == 1 ? typo(typo(whole, random), random) : heard(whole, random);
            String begun = whole.substring(0, Math.min(whole.length(), 2 + random.nextInt(12)))
                    .strip();
            asked.add(new Asked(text, begun, PlantKey.ofSerial(number + 1L)));
        }
        return asked;
    }

    private static String typo(String name, SplittableRandom random) {
        StringBuilder text = new StringBuilder(name);
        int at = 1 + random.nextInt(name.length() - 1);
        char letter = LETTERS.charAt(random.nextInt(LETTERS.length()));
        switch (random.nextInt(3)) {
            case 0 -> text.deleteCharAt(at);
            case 1 -> text.insert(at, letter);
            default -> text.setCharAt(at, letter);
        }
        return text.toString();
    }

    private static String heard(String name, SplittableRandom random) {
        String text = name;
        int start = random.nextInt(HEARD.length);
        for (int i = 0, done = 0; i < HEARD.length && done < 2; i++) {
            String[] pair = HEARD[(start + i) % HEARD.length];
            String next = text.replaceFirst(pair[0], pair[1]);
            done += next.equals(text) ? 0 : 1;
            text = next;
        }
        return text;
    }

    /// @param text as typed or heard
    /// @param begun how far it was typed
    private record Asked(String text, String begun, PlantKey meant) {}
}
