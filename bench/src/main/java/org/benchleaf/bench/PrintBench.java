package org.benchleaf.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import org.benchleaf.content.ContentPack;
import org.benchleaf.render.CardFormat;
import org.benchleaf.render.Photographs;
import org.benchleaf.render.PrintStyle;
import org.benchleaf.render.Printer;
import org.benchleaf.render.page.BenchCard;
import org.benchleaf.render.page.Label;
import org.benchleaf.render.page.LabelRun;
import org.benchleaf.render.page.PlantTitle;
import org.benchleaf.render.page.Shop;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.code.ItemKey;
import org.benchleaf.shared.code.LiveLink;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.plant.Caution;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.WaterNeed;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// Prints bench cards and labels of made-up plants, every one another, start of the program not counted.
final class PrintBench {
    private static final URI BASE = URI.create("https://plants.shop.example");
    private static final Shop SHOP = new Shop("A nursery", "Somewhere");
    private static final List<PlantColor> GREEN =
            PlantColor.readList("green #4F7A3A").orThrow();
    private static final List<String> FLOWERING = List.of("Feb-Mar", "Apr-May", "May-Jun", "Jun-Aug", "Sep-Oct");

    private PrintBench() {}

    static void cards(int count, PrintStream out) throws IOException {
        cards(count, "cards", Photographs.NONE, PrintBench::card, out);
    }

    /// The same with a photograph on each, of forty that come in turn.
    static void cardsWithPhotographs(int count, PrintStream out) throws IOException {
        cards(
                count,
                "cards with a photograph",
                new MadePhotographs(),
                number -> MadePhotographs.on(card(number), number),
                out);
    }

    private static void cards(
            int count, String what, Photographs photographs, IntFunction<BenchCard> card, PrintStream out)
            throws IOException {
        Printer printer = Printer.using(ContentPack.builtIn(), photographs);
        try (Counted nowhere = new Counted()) {
            printer.benchCards(pages(200, card), CardFormat.LARGE, PrintStyle.ENGLISH, nowhere); // warm
            Memory.forgetPeak();
            nowhere.bytes = 0;
            long start = System.nanoTime();
            long cpu = Figures.cpu();
            printer.benchCards(pages(count, card), CardFormat.LARGE, PrintStyle.ENGLISH, nowhere);
            report(out, what, count, System.nanoTime() - start, Figures.cpu() - cpu, nowhere.bytes);
        }
    }

    static void labels(int count, PrintStream out) throws IOException {
        Printer printer = Printer.using(ContentPack.builtIn(), Photographs.NONE);
        LabelRun run = LabelRun.on(ContentPack.builtIn().paper("letter-30"));
        try (Counted nowhere = new Counted()) {
            printer.labels(labels(300), run, PrintStyle.ENGLISH, nowhere); // warm
            List<Label> labels = labels(count);
            Memory.forgetPeak();
            nowhere.bytes = 0;
            long start = System.nanoTime();
            long cpu = Figures.cpu();
            printer.labels(labels, run, PrintStyle.ENGLISH, nowhere);
            report(out, "labels", count, System.nanoTime() - start, Figures.cpu() - cpu, nowhere.bytes);
        }
    }

    private static void report(PrintStream out, String what, int count, long nanos, long cpu, long bytes) {
        long peak = Memory.peakMiB();
        out.printf(
                "%,d %s: %.1f s, %.0f a second, %.2f ms of processor and %,d bytes each; peak heap %d MiB, live %d MiB, limit %d MiB%n",
                count,
                what,
                nanos / 1e9,
                count / (nanos / 1e9),
                cpu / 1e6 / count,
                bytes / count,
                peak,
                Memory.liveMiB(),
                Runtime.getRuntime().maxMemory() >> 20);
    }

    private static Iterable<BenchCard> pages(int count, IntFunction<BenchCard> card) {
        return () -> new Iterator<>() {
            private int next;

            @Override
            public boolean hasNext() {
                return next < count;
            }

            @Override
            public BenchCard next() {
                return card.apply(next++);
            }
        };
    }

    static BenchCard card(int number) {
        SplittableRandom random = new SplittableRandom(number);
        return new BenchCard(
                title(number, random),
                Optional.of("Leaves turning, buds set for spring on every stem"),
                Set.of(Exposure.FULL_SUN, Exposure.PART_SHADE),
                Optional.of(WaterNeed.MEDIUM),
                Set.of(),
                ZoneRange.read("4-8").toOptional(),
                Optional.of(LengthRange.ofFeet(3 + random.nextInt(4), 8)),
                Optional.of(LengthRange.ofFeet(3, 6)),
                new YearLook(
                        Optional.of(new Show(
                                List.of(color("flower", random)),
                                MonthSet.read(FLOWERING.get(random.nextInt(FLOWERING.size())))
                                        .orThrow())),
                        Optional.of(Foliage.DECIDUOUS),
                        List.of(),
                        GREEN,
                        List.of(color("fall", random), color("later", random)),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty()),
                Caution.readList("toxic: dogs, horses - leaves poisonous if eaten")
                        .orThrow(),
                List.of(),
                StockSize.read("#3").toOptional(),
                ItemForm.REGULAR,
                Optional.of(Money.usDollars("24." + (10 + random.nextInt(89)))),
                LiveLink.of(BASE, new ItemKey(PlantKey.ofSerial(number), 1)),
                SHOP,
                Optional.empty());
    }

    /// Hardly two cards have the same, so that no ring comes again.
    private static PlantColor color(String name, SplittableRandom random) {
        return PlantColor.readList("%s #%06X".formatted(name, random.nextInt(1 << 24)))
                .orThrow()
                .getFirst();
    }

    private static List<Label> labels(int count) {
        List<Label> labels = new ArrayList<>(count);
        for (int number = 0; number < count; number++) {
            SplittableRandom random = new SplittableRandom(number);
            labels.add(new Label(
                    title(number, random),
                    StockSize.read("#3").toOptional(),
                    ItemForm.REGULAR,
                    Optional.of("B" + number % 40 + "-" + number % 17),
                    Optional.of("S" + number),
                    Optional.empty(),
                    Optional.empty(),
                    LiveLink.of(BASE, new ItemKey(PlantKey.ofSerial(number), 1))));
        }
        return labels;
    }

    private static PlantTitle title(int number, SplittableRandom random) {
        return PlantTitle.of(SyntheticCatalog.name(number, random), "made-up shrub");
    }

    /// Keeps nothing but how much was written.
    private static final class Counted extends OutputStream {
        private long bytes;

        @Override
        public void write(int one) {
            bytes++;
        }

        @Override
        public void write(byte[] some, int from, int length) {
            bytes += length;
        }
    }
}
