package org.benchleaf.catalog.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import org.benchleaf.catalog.CatalogRevision;
import org.benchleaf.catalog.CatalogView;
import org.benchleaf.catalog.Drafts;
import org.benchleaf.catalog.intake.ImportPlan;
import org.benchleaf.catalog.intake.LotDraft;
import org.benchleaf.catalog.intake.PlantDraft;
import org.benchleaf.catalog.ledger.LedgerEntry;
import org.benchleaf.catalog.ledger.StockEvent;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// Measures the store on made-up plants: a program to be run by hand, not a test.
public final class StoreFigures {
    private static final int CULTIVARS_OF_A_SPECIES = 4;
    private static final int READS = 2000;
    private static final int KEYS_OF_A_READ = 20;

    private static final List<String[]> FACTS = List.of(
            new String[] {"family", "Sapindaceae", "Ericaceae", "Rosaceae", "Oleaceae"},
            new String[] {"life_form", "tree", "shrub", "perennial"},
            new String[] {"habit", "oval", "rounded", "vase", "upright"},
            new String[] {"foliage", "deciduous", "evergreen"},
            new String[] {"hardiness", "3-9", "4-8", "5-8", "5b-9a"},
            new String[] {"height", "3-5 ft", "40-60 ft", "18-24 in", "6-8 ft"},
            new String[] {"spread", "3-5 ft", "30-40 ft", "24-36 in", "6-8 ft"},
            new String[] {"height_10yr", "3 ft", "15-20 ft", "18-24 in"},
            new String[] {"growth_rate", "slow", "medium", "fast"},
            new String[] {"exposure", "full sun", "full sun; part sun", "part shade; full shade"},
            new String[] {"moisture", "medium; moist", "dry; medium", "wet"},
            new String[] {"drought_tolerance", "low", "medium", "high"},
            new String[] {"wet_tolerance", "none", "medium", "high"},
            new String[] {"soil_ph", "5.0-6.5", "6.0-7.5"},
            new String[] {"soil_texture", "loam; clay", "sand; loam"},
            new String[] {"water_need", "low", "medium", "high"},
            new String[] {"deer", "rarely", "seldom", "occasionally", "frequently"},
            new String[] {"flower_color", "white #F4F1E8", "red #B0243A; pink #E6A4B4"},
            new String[] {"bloom", "Apr-May", "Jun-Jul", "Mar"},
            new String[] {"foliage_color", "green #4F7942", "blue-green #5F8A7A"},
            new String[] {"fall_color", "red #A8201A; orange #D2691E", "yellow #E3B505"},
            new String[] {"fruit", "Sep-Nov", "Jun"},
            new String[] {"uses", "hedge; massing", "specimen; street"},
            new String[] {"native_states", "US-PA US-NY US-NJ US-MD US-VA", "US-GA US-FL"},
            new String[] {"cautions", "toxic: dogs, horses - leaves poisonous if eaten"});

    private StoreFigures() {}

    /// @param arguments how many plants
    public static void main(String... arguments) throws IOException {
        int count = Integer.parseInt(arguments[0]);
        Path folder = Files.createTempDirectory("store-figures");
        Path file = folder.resolve("catalog.db");
        try (SqlCatalogStore store = SqlCatalogStore.create(file, Clock.systemUTC())) {
            String lot = applying(store, count);
            say("file %d MB with its log", size(file) + size(folder.resolve("catalog.db-wal")));
            reading(store);
            writing(store, lot);
            timed("open the name book", () -> store.names());
            timed(
                    "check everything",
                    () -> say("problems found: %d", store.check().size()));
        } finally {
            try (var files = Files.list(folder)) {
                for (Path left : files.toList()) {
                    Files.delete(left);
                }
            }
            Files.delete(folder);
        }
    }

    private static String applying(SqlCatalogStore store, int count) {
        List<PlantDraft> plants = plants(count);
        List<LotDraft> lots = lots(plants);
        long before = heap();
        timed(
                "apply " + count + " new plants, " + FACTS.size() + " facts each",
                () -> store.apply(plan(store, plants, List.of()), written -> {}));
        say("heap in use: the plan %d MB, after apply %d MB", before, heap());
        timed("apply the same plan again", () -> store.apply(plan(store, plants, List.of()), written -> {}));
        timed("apply " + lots.size() + " lots", () -> store.apply(plan(store, List.of(), lots), written -> {}));
        timed("apply the same lots again", () -> store.apply(plan(store, List.of(), lots), written -> {}));
        return lots.getFirst().lot();
    }

    private static ImportPlan plan(SqlCatalogStore store, List<PlantDraft> plants, List<LotDraft> lots) {
        return new ImportPlan(
                "plants.csv",
                store.view().revision(),
                ImportPlan.Rank.OWN,
                plants.size() + (long) lots.size(),
                plants,
                lots,
                List.of());
    }

    private static void reading(SqlCatalogStore store) {
        CatalogView view = store.view();
        List<PlantKey> keys = new ArrayList<>();
        AtomicLong highest = new AtomicLong();
        for (int round = 0; round < 3; round++) {
            keys.clear();
            timed(
                    "forEachPlant",
                    () -> view.forEachPlant(plant -> {
                        keys.add(plant.key());
                        if (keys.size() % 20_000 == 0) {
                            highest.set(Math.max(highest.get(), heap()));
                        }
                    }));
        }
        say("heap in use during forEachPlant, after collection: %d MB", highest.get());
        timed("forEachStock", () -> view.forEachStock(stock -> {}));
        Random random = new Random(7);
        percentiles("plants() of " + KEYS_OF_A_READ, () -> view.plants(some(keys, random)));
        percentiles("stock() of " + KEYS_OF_A_READ, () -> view.stock(some(keys, random)));
        percentiles("plant() of one", () -> view.plant(keys.get(random.nextInt(keys.size()))));
        percentiles("revision()", view::revision);
        say("changes since 0: %d", view.changesSince(new CatalogRevision(0)).size());
    }

    private static void writing(SqlCatalogStore store, String lot) {
        AtomicLong entry = new AtomicLong();
        percentiles(
                "ledger entry, acknowledged",
                () -> store.ledger()
                        .record(LedgerEntry.of(
                                lot, new StockEvent.Received(1), "figures", "", "key-" + entry.incrementAndGet())));
    }

    private static List<PlantKey> some(List<PlantKey> keys, Random random) {
        return random.ints(KEYS_OF_A_READ, 0, keys.size()).mapToObj(keys::get).toList();
    }

    private static List<PlantDraft> plants(int count) {
        List<PlantDraft> plants = new ArrayList<>(count);
        for (int number = 0; number < count; number++) {
            int species = number / (CULTIVARS_OF_A_SPECIES + 1);
            BotanicalName name = BotanicalName.ofSpecies("Genus" + letters(species / 10), "species" + letters(species));
            boolean cultivar = number % (CULTIVARS_OF_A_SPECIES + 1) != 0;
            BotanicalName own = cultivar ? name.withCultivar("Cultivar " + number) : name;
            plants.add(Drafts.alsoKnownAs(
                    Drafts.called(Drafts.plant(own, facts(number)), "common name " + number), "Synonymus " + number));
        }
        return plants;
    }

    private static Fact<?>[] facts(int number) {
        return FACTS.stream()
                .map(choices -> {
                    Attribute<?> attribute = Attributes.byId(choices[0]).orElseThrow();
                    return Drafts.fact(
                            attribute, choices[1 + (number * 31 + choices[0].length()) % (choices.length - 1)]);
                })
                .toArray(Fact<?>[]::new);
    }

    private static List<LotDraft> lots(List<PlantDraft> plants) {
        List<LotDraft> lots = new ArrayList<>();
        String[] sizes = {"#3", "#7", "2.5 in cal B&B"};
        for (int number = 0; number < plants.size(); number++) {
            LotDraft lot = Drafts.lot("L" + number, plants.get(number).name(), number % 300);
            lots.add(Drafts.inSize(lot, sizes[number % sizes.length]));
        }
        return lots;
    }

    private static String letters(int number) {
        StringBuilder letters = new StringBuilder();
        for (int rest = number + 26; rest > 0; rest /= 26) {
            letters.append((char) ('a' + rest % 26));
        }
        return letters.toString();
    }

    private static void timed(String what, Runnable work) {
        long start = System.nanoTime();
        work.run();
        say("%s: %.2f s", what, (System.nanoTime() - start) / 1e9);
    }

    private static void percentiles(String what, Runnable work) {
        long[] nanos = new long[READS];
        for (int round = 0; round < 2; round++) { // the first one warms up
            for (int read = 0; read < READS; read++) {
                long start = System.nanoTime();
                work.run();
                nanos[read] = System.nanoTime() - start;
            }
        }
        Arrays.sort(nanos);
        say("%s: p50 %.3f ms, p95 %.3f ms, p99 %.3f ms", what, ms(nanos, 50), ms(nanos, 95), ms(nanos, 99));
    }

    private static double ms(long[] sorted, int percent) {
        return sorted[sorted.length * percent / 100] / 1e6;
    }

    private static long heap() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }

    private static long size(Path file) {
        return file.toFile().length() >> 20;
    }

    private static void say(String form, Object... values) {
        System.out.println(String.format(Locale.ROOT, form, values));
    }
}
