package org.benchleaf.search.substitute;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.benchleaf.shared.name.BotanicalName;

/// Pests and diseases with their hosts, so that a host is not proposed for another one without a word. The list
/// is short; a plant that is not in it may be a host all the same.
public final class Troubles {
    private final List<Trouble> hosts;

    private Troubles(List<Trouble> hosts) {
        this.hosts = List.copyOf(hosts);
    }

    /// The list that comes with the program.
    public static Troubles builtIn() {
        try (InputStream file = Troubles.class.getResourceAsStream("trouble-hosts.tsv")) {
            if (file == null) {
                throw new IllegalStateException("trouble-hosts.tsv is missing from the program");
            }
            return new Troubles(new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split("\t", -1))
                    .map(cells -> new Trouble(cells[0], cells[1], cells[2]))
                    .toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /// What both plants are hosts of: the second one's entries.
    List<Trouble> shared(BotanicalName original, BotanicalName substitute) {
        List<String> known = hosts.stream()
                .filter(trouble -> isHost(trouble, original))
                .map(Trouble::name)
                .toList();
        return hosts.stream()
                .filter(trouble -> known.contains(trouble.name()) && isHost(trouble, substitute))
                .toList();
    }

    private static boolean isHost(Trouble trouble, BotanicalName name) {
        String host = trouble.host();
        return host.indexOf(' ') < 0 ? host.equals(name.genus()) : host.equals(Kin.species(name));
    }
}
