package org.benchleaf.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/// A workspace on a disk that takes no writing. The command runs in a process of its own: who may write everywhere,
/// as in a container, gives that right up there first (`setpriv` of util-linux).
@EnabledOnOs(OS.LINUX)
class ReadOnlyWorkspaceTest {
    @TempDir
    private Path folder;

    private Path shop;

    @BeforeEach
    void makeAWorkspaceReadOnly() throws IOException {
        shop = folder.resolve("shop");
        assertThat(Run.benchleaf("new", shop.toString(), "--shop", "Test nursery")
                        .code())
                .isZero();
        assertThat(load("Clethra alnifolia").code()).isZero();
        permit(shop.resolve("benchleaf.db"), "r--r--r--");
        permit(shop, "r-xr-xr-x");
    }

    @AfterEach
    void makeItWritable() throws IOException {
        permit(shop, "rwxr-xr-x");
        permit(shop.resolve("benchleaf.db"), "rw-r--r--");
    }

    @Test
    void loadingSaysThatItIsReadOnlyAndNothingIsHalfApplied() throws IOException, InterruptedException {
        Run run = restricted("load", list("Itea virginica").toString(), "--workspace", shop.toString());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err())
                .contains("benchleaf.db cannot be written")
                .contains(shop.toString())
                .hasLineCount(1);
        makeItWritable();
        assertThat(Run.benchleaf("plant", "Itea virginica", "--workspace", shop.toString())
                        .code())
                .isNotZero();
    }

    @Test
    void aNewWorkspaceInAReadOnlyFolderIsRefused() throws IOException, InterruptedException {
        Path inside = shop.resolve("another");
        Run run = restricted("new", inside.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(inside.toString()).hasLineCount(1);
    }

    private Run load(String name) throws IOException {
        return Run.benchleaf("load", list(name).toString(), "--workspace", shop.toString());
    }

    private Path list(String name) throws IOException {
        return Files.writeString(folder.resolve(name + ".csv"), "name,source\n" + name + ",from memory\n");
    }

    private static void permit(Path path, String permissions) throws IOException {
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
    }

    private Run restricted(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        Path probe = Files.createFile(
                folder.resolve("probe"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r--r--r--")));
        if (Files.isWritable(probe)) {
            assumeThat(Path.of("/usr/bin/setpriv")).isExecutable();
            command.addAll(List.of("/usr/bin/setpriv", "--bounding-set=-dac_override,-dac_read_search"));
        }
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                Main.class.getName()));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        int code = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        return new Run(
                code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }
}
