package org.benchleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.benchleaf.app.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// A shop that does not tell strangers how many it has or what they cost tells it nowhere.
class TellingTest {
    private static final String PLANTS = """
        name,life_form,hardiness,height,source
        Itea virginica,shrub,5-9,3-5 ft,from memory
        Clethra alnifolia,shrub,4-9,5-8 ft,from memory
        """;
    // counts and prices that nothing else on a page could be
    private static final String STOCK = """
        lot,name,size,count,price,ready
        L1,Itea virginica,#3,7361,$58.17,
        L2,Clethra alnifolia,#3,6,$58.19,
        L3,Itea virginica,#5,4519,$58.23,2027-W14
        """;
    private static final List<String> SECRETS = List.of("7361", "7,361", "4519", "4,519", "58.17", "58.19", "58.23");

    private static List<String> paths(Shop shop) {
        return List.of(
                "/",
                "/available",
                "/available.csv",
                "/available.json",
                shop.plant("Itea virginica"),
                shop.plant("Clethra alnifolia"),
                "/find?q=zone+6%2C+40+in+%233%2C+under+%2459",
                "/find?q=9000+in+%233%2C+under+%2440",
                "/compare?add=Itea+virginica",
                "/api/v1/available",
                "/api/v1/plants/" + shop.plant("Itea virginica").substring("/p/".length()),
                "/api/v1/plants/" + shop.plant("Itea virginica").substring("/p/".length()) + "/substitutes",
                "/api/v1/need?q=shrub+under+%2459");
    }

    @Test
    void coarsely(@TempDir Path folder) {
        try (Shop shop = Shop.with(folder, "counts = coarse\nprices = hidden\n", PLANTS, STOCK)) {
            for (String path : paths(shop)) {
                assertThat(shop.get(path).body()).as(path).doesNotContain(SECRETS.toArray(String[]::new));
            }
            assertThat(shop.get("/available").body()).contains("plenty now").contains("few now");
            assertThat(shop.get("/available.csv").body()).contains(",plenty,").contains(",few,");
            assertThat(shop.get(shop.plant("Itea virginica")).body()).contains("plenty from the week of 5 April 2027");
        }
    }

    @Test
    void notAtAll(@TempDir Path folder) {
        try (Shop shop = Shop.with(folder, "counts = hidden\nprices = hidden\n", PLANTS, STOCK)) {
            for (String path : paths(shop)) {
                assertThat(shop.get(path).body())
                        .as(path)
                        .doesNotContain(SECRETS.toArray(String[]::new))
                        .doesNotContain("plenty");
            }
            assertThat(shop.get("/available").body()).contains("here now");
        }
    }

    @Test
    void everythingWhereNothingIsKeptBack(@TempDir Path folder) {
        try (Shop shop = Shop.with(folder, "", PLANTS, STOCK)) {
            assertThat(shop.get("/available.csv").body()).contains("7361").contains("58.17");
            assertThat(shop.get("/available").body()).contains("7,361 now").contains("$58.17");
        }
    }
}
