package org.benchleaf.app.web.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Main;
import org.benchleaf.app.cli.Console;
import org.benchleaf.app.web.Server;
import org.benchleaf.catalog.accounts.Role;

/// A small shop with its server running, on a Wednesday in late November.
final class DeskShop implements AutoCloseable {
    static final Clock NOVEMBER = Clock.fixed(Instant.parse("2026-11-25T15:00:00Z"), ZoneId.of("America/New_York"));

    // facts from memory
    static final String PLANTS = """
            name,common_names,life_form,foliage,hardiness,height,exposure,fall_color,fall_months,selling_note,source
            Itea virginica,Virginia sweetspire,shrub,deciduous,5-9,3-5 ft,full sun; part shade; full shade,red #B8272F,Oct-Nov,,from memory
            Itea virginica 'Henry's Garnet',,,,,3-4 ft,,,,Red until Thanksgiving,from memory
            Fothergilla gardenii,dwarf witchalder,shrub,deciduous,5-8,2-3 ft,full sun; part shade,orange #E08038,Oct-Nov,,from memory
            Corylopsis spicata,spike winterhazel,shrub,deciduous,5-8,6-10 ft,part shade,yellow #E3C34A,Oct,,from memory
            """;
    static final String STOCK = """
            lot,name,size,count,price,location
            L1,Itea virginica,#3,60,$18.50,A1
            L2,Itea virginica 'Henry's Garnet',#3,8,$21.50,A2
            L3,Fothergilla gardenii,#3,55,$24.00,B1
            L4,Corylopsis spicata,#5,60,$39.00,B2
            """;

    final Path folder;
    final Benchleaf benchleaf;
    final Server server;
    private final Map<Role, StaffClient> clients = new EnumMap<>(Role.class);

    DeskShop(Path folder, String name) throws IOException {
        this.folder = folder.resolve("shop");
        run("new", this.folder.toString(), "--shop", name);
        Path plants = Files.writeString(folder.resolve("plants.csv"), PLANTS);
        Path stock = Files.writeString(folder.resolve("stock.csv"), STOCK);
        run("load", plants.toString(), stock.toString(), "--workspace", this.folder.toString());
        benchleaf = Benchleaf.open(this.folder, NOVEMBER);
        server = Server.start(benchleaf, "127.0.0.1", 0);
    }

    private static void run(String... arguments) {
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said);
        assertThat(Main.run(new Console(out, out), NOVEMBER, arguments))
                .as(said.toString())
                .isZero();
    }

    /// Somebody of a role, signed in once.
    StaffClient as(Role role) {
        return clients.computeIfAbsent(
                role, some -> StaffClient.of(benchleaf, server.port(), "The " + role.term(), role));
    }

    @Override
    public void close() {
        server.close();
        benchleaf.close();
    }
}
