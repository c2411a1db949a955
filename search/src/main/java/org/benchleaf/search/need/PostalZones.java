package org.benchleaf.search.need;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.shared.measure.HardinessZone;

/// Hardiness zones by postal code, from a table the shop brings: a line of headings with `zipcode` and `zone`,
/// then one code a line. None comes with the program. Immutable.
public final class PostalZones {
    /// No table.
    public static final PostalZones NONE = new PostalZones(Map.of(), List.of());

    private final Map<String, HardinessZone> zones;
    private final List<String> unread;

    private PostalZones(Map<String, HardinessZone> zones, List<String> unread) {
        this.zones = zones;
        this.unread = unread;
    }

    /// Reads a table; columns other than the two may stand beside them.
    ///
    /// @throws IOException when it cannot be read
    /// @throws IllegalArgumentException when the headings are not there
    public static PostalZones read(Reader table) throws IOException {
        BufferedReader lines = new BufferedReader(table);
        String first = lines.readLine();
        List<String> headings = first == null ? List.of() : cells(first.replace("\ufeff", ""));
        int code = headings.indexOf("zipcode");
        int zone = headings.indexOf("zone");
        if (code < 0 || zone < 0) {
            throw new IllegalArgumentException("a table of zones needs the headings zipcode and zone");
        }
        Map<String, HardinessZone> zones = new HashMap<>();
        List<String> unread = new ArrayList<>();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            List<String> cells = cells(line);
            if (cells.size() > Math.max(code, zone)) {
                Optional<HardinessZone> read =
                        HardinessZone.read(cells.get(zone)).toOptional();
                read.ifPresent(found -> zones.put(padded(cells.get(code)), found));
                if (read.isEmpty()) {
                    unread.add(line);
                }
            } else if (!line.isBlank()) {
                unread.add(line);
            }
        }
        return new PostalZones(zones, List.copyOf(unread));
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split(",", -1))
                .map(cell -> cell.replace("\"", "").strip().toLowerCase(Locale.ROOT))
                .toList();
    }

    /// Spreadsheet programs drop the zeros that codes of New England begin with.
    private static String padded(String code) {
        return code.matches("\\d{3,4}") ? "0".repeat(5 - code.length()) + code : code;
    }

    /// The zone of a code: five digits, or what another country's table holds.
    public Optional<HardinessZone> zone(String code) {
        return Optional.ofNullable(zones.get(code.strip().toLowerCase(Locale.ROOT)));
    }

    /// How many codes it holds.
    public int size() {
        return zones.size();
    }

    /// Lines that could not be read, as they stand.
    public List<String> unread() {
        return unread;
    }
}
