package org.benchleaf.content;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/// Opens the files of the content pack by key: the shop's own folder first, when there is one, then what comes with
/// the program.
///
/// A key is a relative path of plain names, such as `styles/sheet.css`; nothing else is ever opened, so a page cannot
/// reach a file or an address of its own choice. It holds no state and may be shared between threads.
public final class ContentPack {
    private static final Pattern KEY =
            Pattern.compile("[a-z0-9][A-Za-z0-9_-]*(?:/[A-Za-z0-9][A-Za-z0-9_-]*)*\\.[A-Za-z0-9]+");

    private final Optional<Path> shopFolder;
    private final Optional<Palette> palette;

    private ContentPack(Optional<Path> shopFolder, Optional<Palette> palette) {
        this.shopFolder = shopFolder;
        this.palette = palette;
    }

    /// What comes with the program.
    public static ContentPack builtIn() {
        return new ContentPack(Optional.empty(), Optional.empty());
    }

    /// What comes with the program, with the files of a shop's folder laid over it.
    ///
    /// @param folder laid out like the pack: `templates/`, `styles/`, `wording/`, `fonts/`, `stock-papers.csv`
    public static ContentPack withShopFolder(Path folder) {
        return new ContentPack(Optional.of(folder.toAbsolutePath().normalize()), Optional.empty());
    }

    /// The same with the styles of paper in the inks of a palette.
    public ContentPack withPalette(Palette chosen) {
        return new ContentPack(shopFolder, Optional.of(chosen));
    }

    /// The palette in use: the one that was chosen, else the first.
    public Palette palette() {
        return palette.orElseGet(() -> palettes().getFirst());
    }

    /// All palettes, in the order of the file.
    public List<Palette> palettes() {
        return Palette.read(text("palettes.csv"));
    }

    /// @throws MissingContent when no palette has this name
    public Palette palette(String name) {
        return palettes().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new MissingContent("palette " + name, "palettes.csv"));
    }

    /// @throws MissingContent when no file has this key, or it is no key
    public byte[] bytes(String key) {
        return find(key).orElseThrow(() -> new MissingContent(key, where()));
    }

    /// @throws MissingContent when no file has this key, or it is no key
    public InputStream open(String key) {
        return new ByteArrayInputStream(bytes(key));
    }

    /// UTF-8.
    ///
    /// @throws MissingContent when no file has this key, or it is no key
    public String text(String key) {
        return new String(bytes(key), StandardCharsets.UTF_8);
    }

    /// Empty when no file has this key, or it is no key.
    public Optional<byte[]> find(String key) {
        if (!KEY.matcher(key).matches()) {
            return Optional.empty();
        }
        Optional<byte[]> file = fromShop(key).or(() -> fromProgram(key));
        return key.endsWith(".css") ? file.map(this::tinted) : file;
    }

    private byte[] tinted(byte[] file) {
        String style = new String(file, StandardCharsets.UTF_8);
        return style.indexOf('%') < 0 ? file : palette().tint(style).getBytes(StandardCharsets.UTF_8);
    }

    private Optional<byte[]> fromShop(String key) {
        return shopFolder
                .map(folder -> folder.resolve(key))
                .filter(Files::isRegularFile)
                .map(file -> {
                    try {
                        return Files.readAllBytes(file);
                    } catch (IOException unreadable) {
                        throw new UncheckedIOException(unreadable);
                    }
                });
    }

    private static Optional<byte[]> fromProgram(String key) {
        try (InputStream file = ContentPack.class.getResourceAsStream(key)) {
            return file == null ? Optional.empty() : Optional.of(file.readAllBytes());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /// All stock papers, in the order of the file.
    public List<StockPaper> papers() {
        return StockPapers.read(text("stock-papers.csv"));
    }

    /// @throws MissingContent when no paper has this key
    public StockPaper paper(String key) {
        return papers().stream()
                .filter(paper -> paper.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new MissingContent("stock paper " + key, "stock-papers.csv"));
    }

    private String where() {
        return shopFolder
                .map(folder -> "the shop's folder " + folder + " and the built-in content")
                .orElse("the built-in content");
    }
}
