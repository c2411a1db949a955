package org.benchleaf.app.web.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.catalog.accounts.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ImportColumnsTest {
    private DeskShop shop;
    private StaffClient editor;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        shop = new DeskShop(folder, "Test nursery");
        editor = shop.as(Role.EDITOR);
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private static String field(String page, String name) {
        Matcher field =
                Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
        assertThat(field.find()).as(name).isTrue();
        return field.group(1);
    }

    private static String alert(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(422);
        Matcher alert = Pattern.compile("role=\"alert\">([^<]*)<").matcher(answer.body());
        assertThat(alert.find()).isTrue();
        return alert.group(1);
    }

    @Test
    void columnsAreToldInThePageAndKeptUnderAName() throws IOException, InterruptedException {
        byte[] list = "Was ist es,Topf,Stk,Nr\nCorylopsis spicata,#3,12,N7\n".getBytes(StandardCharsets.UTF_8);
        String page = editor.upload("/desk/import", "file", "fremd.csv", list, "columns", "yes")
                .body();
        assertThat(page).contains("Was ist es").contains("Corylopsis spicata");
        String id = field(page, "id");
        String[] told = {
            "id",
            id,
            "kind",
            "stock",
            "source",
            "fremd.csv",
            "name",
            "fremd",
            "heading",
            "Was ist es",
            "field",
            "name",
            "unit",
            "",
            "heading",
            "Topf",
            "field",
            "size",
            "unit",
            "",
            "heading",
            "Stk",
            "field",
            "count",
            "unit",
            "",
            "heading",
            "Nr",
            "field",
            "lot",
            "unit",
            ""
        };
        HttpResponse<String> preview = editor.post("/desk/import/columns", told);
        assertThat(preview.statusCode()).as(preview.body()).isEqualTo(200);
        assertThat(preview.body()).contains("Corylopsis spicata").contains("Load it");
        assertThat(editor.page("/desk/import")).contains("<option>fremd</option>");
        assertThat(editor.upload("/desk/import", "file", "fremd.csv", list, "map", "fremd")
                        .body())
                .contains("Load it");
        assertThat(alert(editor.post("/desk/import/columns", told))).contains("fremd");
        assertThat(alert(editor.post("/desk/import/columns", "id", id, "source", "x", "heading", "Stk", "field", "")))
                .contains("no column holds anything");
        assertThat(alert(shop.as(Role.OWNER).post("/desk/import/columns", told)))
                .contains("this preview is gone");
    }
}
