package org.benchleaf.app.web.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.benchleaf.catalog.accounts.Role;
import org.benchleaf.catalog.lists.PlantList;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// Plant lists at the desk, as a browser without script sends them.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ListDeskTest {
    private DeskShop shop;
    private StaffClient seller;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        shop = new DeskShop(folder, "Test nursery");
        seller = shop.as(Role.WALKER);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private static String alert(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(422);
        Matcher alert = Pattern.compile("role=\"alert\">([^<]*)<").matcher(answer.body());
        assertThat(alert.find()).isTrue();
        return alert.group(1);
    }

    private String begun(String name) throws IOException, InterruptedException {
        return StaffClient.led(seller.post("/desk/lists", "name", name, "zone", "6a", "light", "part shade"));
    }

    private PlantList list(String name) {
        return shop.benchleaf.lists().find(name).orElseThrow();
    }

    private HttpResponse<String> change(String name, String what, String... fields)
            throws IOException, InterruptedException {
        String[] all = new String[fields.length + 6];
        all[0] = "list";
        all[1] = name;
        all[2] = "version";
        all[3] = Integer.toString(list(name).version());
        all[4] = "do";
        all[5] = what;
        System.arraycopy(fields, 0, all, 6, fields.length);
        return seller.post("/desk/lists/list", all);
    }

    @Test
    void aBedIsFilledCheckedAndPriced() throws IOException, InterruptedException {
        String path = begun("Mill Lane");
        // 200 sq ft at 18 in: 200 / 1.5², 88.9, rounded up (arithmetic; plant-spacing.csv has published tables of it)
        HttpResponse<String> added = change(
                "Mill Lane",
                "add",
                "plant",
                "Virginia sweetspire",
                "size",
                "#3",
                "area",
                "10 x 20 ft",
                "spacing",
                "18 in");
        assertThat(StaffClient.led(added)).isEqualTo(path + "&done=list-add");
        String page = seller.page(path);
        assertThat(page)
                .contains("Itea virginica")
                .contains("89 ·")
                .contains("60 to be had, 29 short")
                .contains("$18.50 each, $1,646.50")
                .contains("Only 60 of the 89")
                .contains("/desk/call?q=");
        assertThat(StaffClient.led(change("Mill Lane", "quantity", "line", "1", "quantity", "40")))
                .isEqualTo(path + "&done=list-quantity");
        assertThat(seller.page(path)).contains("40 ·").doesNotContain("Only 60 of the 89");
        assertThat(StaffClient.led(change("Mill Lane", "remove", "line", "1"))).isEqualTo(path + "&done=list-remove");
        assertThat(list("Mill Lane").lines()).isEmpty();
    }

    @Test
    void whatIsNotUnderstoodIsToldAndNotTypedAgain() throws IOException, InterruptedException {
        begun("Oak Hill");
        HttpResponse<String> nothing =
                change("Oak Hill", "add", "plant", "Xyzzy quux", "quantity", "5", "note", "by the gate");
        assertThat(alert(nothing)).contains("Xyzzy quux");
        assertThat(nothing.body()).contains("value=\"by the gate\"");
        assertThat(alert(change("Oak Hill", "add", "plant", "Itea virginica"))).contains("how many?");
        assertThat(alert(change("Oak Hill", "add", "plant", "Itea virginica", "area", "large", "spacing", "18 in")))
                .contains("large");
        assertThat(alert(change("Oak Hill", "site", "zone", "balmy"))).contains("balmy");
        assertThat(alert(seller.post("/desk/lists", "name", "oak hill"))).contains("there is a list");
        assertThat(list("Oak Hill").lines()).isEmpty();
    }

    @Test
    void ofTwoWhoChangeAListAtOnceTheSecondIsTold() throws IOException, InterruptedException {
        begun("Pond");
        int seen = list("Pond").version();
        change("Pond", "add", "plant", "Itea virginica", "quantity", "5");
        HttpResponse<String> late = shop.as(Role.OWNER)
                .post(
                        "/desk/lists/list",
                        "list",
                        "Pond",
                        "version",
                        Integer.toString(seen),
                        "do",
                        "add",
                        "plant",
                        "Corylopsis spicata",
                        "quantity",
                        "3");
        assertThat(alert(late)).contains("changed by somebody else");
        assertThat(list("Pond").lines()).hasSize(1);
    }

    @Test
    void itIsTakenAlongAsASpreadsheetAndAsPaper() throws IOException, InterruptedException {
        String path = begun("Tea <Garden>");
        change("Tea <Garden>", "add", "plant", "Fothergilla gardenii", "quantity", "12", "note", "=1+1");
        String page = seller.page(path);
        assertThat(page).contains("Tea &lt;Garden&gt;");
        String export = "/desk/lists/export?list=" + StaffClient.encoded("Tea <Garden>");
        String csv = new String(seller.bytes(export + "&as=csv"), StandardCharsets.UTF_8);
        assertThat(csv).contains("Fothergilla gardenii").contains("'=1+1").contains("288.00");
        assertThat(seller.bytes(export + "&as=xlsx")).startsWith("PK".getBytes(StandardCharsets.US_ASCII));
        try (var pack = Loader.loadPDF(seller.bytes("/desk/lists/pack?list=" + StaffClient.encoded("Tea <Garden>")))) {
            assertThat(new PDFTextStripper().getText(pack)).contains("Tea <Garden>", "Fothergilla gardenii");
        }
    }

    @Test
    void aViewerLooksAndChangesNothing() throws IOException, InterruptedException {
        begun("Viewed");
        StaffClient viewer = shop.as(Role.VIEWER);
        assertThat(viewer.page("/desk/lists/list?list=Viewed")).doesNotContain("name=\"plant\"");
        assertThat(viewer.post("/desk/lists/list", "list", "Viewed", "version", "1", "do", "delete")
                        .statusCode())
                .isEqualTo(403);
        assertThat(StaffClient.led(change("Viewed", "delete"))).isEqualTo("/desk/lists?done=list-deleted");
        assertThat(shop.benchleaf.lists().find("Viewed")).isEmpty();
        assertThat(viewer.get("/desk/lists/list?list=Viewed").statusCode()).isEqualTo(404);
    }
}
