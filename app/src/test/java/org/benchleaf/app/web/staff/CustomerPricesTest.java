package org.benchleaf.app.web.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import org.benchleaf.app.Shop;
import org.benchleaf.catalog.accounts.Actor;
import org.benchleaf.catalog.accounts.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// A customer sees what is there and what it costs them; strangers see neither.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CustomerPricesTest {
    private static final String PLANTS = """
        name,life_form,hardiness,height,source
        Itea virginica,shrub,5-9,3-5 ft,from memory
        Clethra alnifolia,shrub,4-9,5-8 ft,from memory
        """;
    private static final String STOCK = """
        lot,name,size,count,price,ready
        L1,Itea virginica,#3,7361,$58.17,
        L2,Clethra alnifolia,#3,64,$30.00,
        """;
    private static final Actor TEST = new Actor("test", Actor.COMMAND_LINE);
    // 58.17 x 1.15 = 66.8955
    private static final String LANDSCAPERS = "$66.90";

    private Shop shop;
    private int port;

    @BeforeAll
    void open(@TempDir Path folder) {
        shop = Shop.with(
                folder, "counts = hidden\nprices = hidden\ntiers = landscaper 1.15, retail 2.2\n", PLANTS, STOCK);
        port = URI.create(shop.at("/")).getPort();
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private StaffClient customer(String name, String tier) {
        if (shop.benchleaf().accounts().find(name).isEmpty()) {
            shop.benchleaf().accounts().addCustomer(name, Optional.of(tier), StaffClient.PASSWORD.toCharArray(), TEST);
        }
        return StaffClient.of(shop.benchleaf(), port, name, Role.CUSTOMER);
    }

    @Test
    void onEveryPageOfTheShopWindow() throws IOException, InterruptedException {
        StaffClient landscaper = customer("Moss and Sons", "landscaper");
        String itea = shop.plant("Itea virginica");
        for (String path : new String[] {
            "/available", itea, "/find?q=shrub+for+zone+6", "/compare?add=Itea+virginica&add=Clethra+alnifolia"
        }) {
            assertThat(landscaper.page(path))
                    .as(path)
                    .contains("7,361 now")
                    .contains(LANDSCAPERS)
                    .doesNotContain("58.17");
            assertThat(shop.get(path).body()).as(path).doesNotContain("66.90").doesNotContain("7,361");
        }
        assertThat(landscaper.page("/available")).contains("prices for landscaper");
        assertThat(landscaper.page(itea)).contains("prices for landscaper").contains("\"66.90\"");
        assertThat(landscaper.page("/available.csv")).contains(",66.90,USD,");
        assertThat(customer("Leaf and Lawn", "retail").page("/available.csv")).contains(",127.97,USD,");
    }

    @Test
    void whatTheyAskIsTakenAsTheirPrice() throws IOException, InterruptedException {
        StaffClient landscaper = customer("Moss and Sons", "landscaper");
        // 30.00 x 1.15 = 34.50
        assertThat(landscaper.page("/find?q=shrub+under+%2434.50"))
                .contains("1 meet every wish")
                .contains("#3: 64 now, $34.50");
        String dear = landscaper.page("/find?q=shrub+under+%2434.49");
        assertThat(dear)
                .contains("0 meet every wish")
                .contains("at most $34.49 each")
                .doesNotContain("30.00");
        assertThat(landscaper.page("/api/v1/need?q=shrub+under+%2434.50")).contains("\"meet_all\":1");
        assertThat(landscaper.page("/api/v1/need?q=shrub+under+%2434.49")).contains("\"meet_all\":0");
    }

    @Test
    void theDeskIsNotForThem() throws IOException, InterruptedException {
        StaffClient landscaper = customer("Moss and Sons", "landscaper");
        assertThat(landscaper.get("/desk").statusCode()).isEqualTo(403);
        assertThat(landscaper.get("/walk/plants.json").statusCode()).isEqualTo(403);
        assertThat(landscaper.page("/staff/me")).contains("Moss and Sons").doesNotContain("href=\"/desk");
        assertThat(StaffClient.led(landscaper.get("/staff/sign-in"))).isEqualTo("/available");
    }

    @Test
    void noPriceIsToldRatherThanAWrongOne() throws IOException, InterruptedException {
        assertThat(customer("Old Friend", "given up").page("/available"))
                .contains("7,361 now")
                .doesNotContain("58.17");
    }

    @Test
    void theOwnerMakesThemOne() throws IOException, InterruptedException {
        StaffClient owner = StaffClient.of(shop.benchleaf(), port, "Olive", Role.OWNER);
        assertThat(owner.page("/desk/staff")).contains("prices for retail");
        StaffClient.led(owner.post(
                "/desk/staff", "name", "Fern Hill", "role", "customer: retail", "password", StaffClient.PASSWORD));
        assertThat(shop.benchleaf().accounts().find("Fern Hill").orElseThrow().tier())
                .contains("retail");
        StaffClient.led(owner.post("/desk/staff/role", "name", "Fern Hill", "role", "customer: landscaper"));
        assertThat(shop.benchleaf().accounts().find("Fern Hill").orElseThrow().tier())
                .contains("landscaper");
        assertThat(owner.post("/desk/staff/role", "name", "Fern Hill", "role", "customer: nobody's")
                        .statusCode())
                .isEqualTo(422);
        StaffClient.led(owner.post("/desk/staff/role", "name", "Fern Hill", "role", "viewer"));
        assertThat(shop.benchleaf().accounts().find("Fern Hill").orElseThrow().tier())
                .isEmpty();
    }
}
