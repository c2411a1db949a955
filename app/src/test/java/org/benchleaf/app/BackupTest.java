package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupTest {
    @TempDir
    private Path folder;

    private Path shop;
    private Path backups;

    @BeforeEach
    void makeShop() throws IOException {
        shop = folder.resolve("shop");
        backups = folder.resolve("backups");
        Path plants = Files.writeString(
                folder.resolve("plants.csv"),
                "name,common_names,height,hardiness,source\nAcer rubrum,red maple,40-60 ft,3-9,a book\n");
        Path stock = Files.writeString(
                folder.resolve("stock.csv"),
                "lot,name,size,place,count,ready_week,price\nL1,Acer rubrum,#3,A1,20,,18.50\n");
        run("new", shop.toString(), "--shop", "Test nursery");
        run("load", plants.toString(), stock.toString(), "-w", shop.toString());
        Files.writeString(shop.resolve("photographs/maple.jpg"), "a picture");
    }

    @Test
    void aRestoredBackupAnswersAsTheShopDid() throws IOException {
        run("stock", "hold", "L1", "5", "--key", "order-1", "-w", shop.toString());
        String before = run("stock", "availability", "Acer rubrum", "--json", "-w", shop.toString());
        String said = run("backup", backups.toString(), "-w", shop.toString());
        assertThat(said).contains("1 plant, 1 lot").contains("opened and looked through");
        run("stock", "ship", "L1", "3", "-w", shop.toString());
        Path again = folder.resolve("again");
        run("restore", made().toString(), "-w", again.toString());
        assertThat(run("stock", "availability", "Acer rubrum", "--json", "-w", again.toString()))
                .isEqualTo(before);
        assertThat(again.resolve("photographs/maple.jpg")).hasContent("a picture");
        assertThat(run("need", "zone 6", "-w", again.toString())).contains("Acer rubrum");
    }

    @Test
    void isMadeWhileTheShopIsOpenAndSold() throws IOException {
        try (Benchleaf open = Benchleaf.open(shop, Run.NOVEMBER)) {
            assertThat(open.catalog().revision().number()).isPositive();
            run("backup", backups.toString(), "-w", shop.toString());
            run("stock", "ship", "L1", "3", "-w", shop.toString());
        }
        assertThat(made()).isDirectoryContaining("glob:**/benchleaf.db");
        assertThat(made().resolve("index")).doesNotExist();
    }

    @Test
    void overwritesNothing() throws IOException {
        run("backup", backups.toString(), "-w", shop.toString());
        Run refused = Run.benchleaf("restore", made().toString(), "-w", shop.toString());
        assertThat(refused.code()).isEqualTo(ErrorReport.USAGE);
        assertThat(refused.err()).contains("is not empty; choose a new folder");
        assertThat(Run.benchleaf("backup", shop.resolve("copies").toString(), "-w", shop.toString())
                        .err())
                .contains("lies inside the workspace");
        assertThat(shop.resolve("copies")).doesNotExist();
    }

    @Test
    void aDamagedBackupIsNotRestoredInSilence() throws IOException {
        run("backup", backups.toString(), "-w", shop.toString());
        try (RandomAccessFile file =
                new RandomAccessFile(made().resolve("benchleaf.db").toFile(), "rw")) {
            byte[] noise = new byte[4096 * 4];
            java.util.Arrays.fill(noise, (byte) 0x5a);
            file.seek(file.length() / 2 / 4096 * 4096);
            file.write(noise);
        }
        Path again = folder.resolve("again");
        Run run = Run.benchleaf("restore", made().toString(), "-w", again.toString());
        assertThat(run.code()).isNotZero();
        assertThat(run.out() + run.err()).containsIgnoringCase("damage");
    }

    private Path made() throws IOException {
        try (Stream<Path> all = Files.list(backups)) {
            List<Path> folders = all.toList();
            assertThat(folders).hasSize(1);
            return folders.getFirst();
        }
    }

    private static String run(String... arguments) {
        Run run = Run.benchleaf(arguments);
        assertThat(run.code()).as(run.err()).isZero();
        return run.out();
    }
}
