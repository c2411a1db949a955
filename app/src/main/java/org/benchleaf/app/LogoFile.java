package org.benchleaf.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import org.benchleaf.render.picture.Logo;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.jspecify.annotations.Nullable;

/// The logo that the settings name: a file of the workspace, by its bare name; no link is followed. It is read when it
/// is first needed and again when the file has changed. Safe for many threads.
public final class LogoFile {
    private final Path folder;
    private final Optional<String> name;
    private @Nullable Known known;

    private record Known(FileTime changed, long size, Logo logo) {}

    LogoFile(Workspace workspace, ShopLook look) {
        this.folder = workspace.folder();
        this.name = look.logo();
    }

    /// @return empty when the shop has none
    /// @throws Refusal when the settings name one that is not there, or cannot be printed
    public synchronized Optional<Logo> logo() {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Path file = folder.resolve(name.get());
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            if (!ShopLook.isLogoName(name.get()) || !now.isRegularFile() || now.size() > Logo.LARGEST) {
                throw missing();
            }
            Known read = known;
            if (read == null || read.size() != now.size() || !read.changed().equals(now.lastModifiedTime())) {
                read = new Known(now.lastModifiedTime(), now.size(), read(Files.readAllBytes(file), name.get()));
                known = read;
            }
            return Optional.of(read.logo());
        } catch (IOException notThere) {
            throw missing();
        }
    }

    private Refusal missing() {
        return new Refusal(Problem.of("logo.missing", name.orElse("")).with("folder", folder.toString()));
    }

    /// The same for pages that must open whatever the settings say.
    public Optional<Logo> logoIfThere() {
        try {
            return logo();
        } catch (Refusal unfit) {
            return Optional.empty();
        }
    }

    /// Looks at a file that somebody wants as the logo.
    ///
    /// @param file its bytes
    /// @throws Refusal when it is none that can be printed; says why
    public static Logo read(byte[] file, String name) {
        return switch (Logo.read(file, name)) {
            case Reading.Read<Logo>(Logo logo) -> logo;
            case Reading.Refused<Logo>(Problem problem) -> throw new Refusal(problem);
        };
    }
}
