package org.benchleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.benchleaf.app.Shop;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/// What programs read is what `openapi.json` says, no more and no less.
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ApiTest {
    private final ObjectMapper json = new ObjectMapper();
    private Shop shop;
    private JsonNode document;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        shop = Shop.demo(folder);
        document = json.readTree(shop.get("/api/v1/openapi.json").body());
    }

    @AfterAll
    void close() {
        shop.close();
    }

    private JsonNode get(String path) throws IOException {
        var response = shop.get(path);
        assertThat(response.statusCode()).as(path).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type"))
                .get()
                .asString()
                .startsWith("application/json");
        return json.readTree(response.body());
    }

    private String key(String plant) {
        return shop.plant(plant).substring("/p/".length());
    }

    @Test
    void theDocumentNamesEveryAddressAndNoOther() {
        List<String> described = new ArrayList<>();
        document.get("paths").fieldNames().forEachRemaining(described::add);
        List<String> routed = Routes.of(shop.benchleaf()).routes().stream()
                .map(route -> route.path())
                .filter(path -> path.startsWith("/api/v1/"))
                .toList();
        assertThat(document.get("openapi").asText()).isEqualTo("3.1.0");
        assertThat(routed).isNotEmpty().allSatisfy(path -> assertThat(described).contains(path));
        assertThat(described).allSatisfy(path -> assertThat(routed).contains(path));
    }

    // Fetch Standard, "CORS check": with `*` a script of another site reads an answer to a request without credentials
    @Test
    void pagesOfOtherSitesReadWhatEverybodyIsToldAndNothingElse() {
        for (String path : List.of("/api/v1/available", "/api/v1/names?q=itea", "/available.json", "/available.csv")) {
            assertThat(shop.get(path, "Origin", "https://elsewhere.example")
                            .headers()
                            .allValues("Access-Control-Allow-Origin"))
                    .as(path)
                    .containsExactly("*");
        }
        for (String path : List.of("/", "/desk", "/walk/plants.json", "/health")) {
            assertThat(shop.get(path, "Origin", "https://elsewhere.example")
                            .headers()
                            .allValues("Access-Control-Allow-Origin"))
                    .as(path)
                    .isEmpty();
        }
    }

    @Test
    void everyAnswerHasTheShapeThatTheDocumentGives() throws IOException {
        String itea = key("Itea virginica");
        Map<String, List<String>> asked = Map.of(
                "/api/v1/plants", List.of("?skip=3&limit=7", "?skip=x", "?skip=99999"),
                "/api/v1/plants/{key}", List.of(itea, key("Fothergilla gardenii")),
                "/api/v1/plants/{key}/substitutes", List.of(itea),
                "/api/v1/need", List.of("?q=" + encoded("fall color, zone 6, shade, 40 in #3, xyzzy"), "?q=", ""),
                "/api/v1/names", List.of("?q=korry+lopsis", "?q="),
                "/api/v1/available", List.of(""));
        for (var one : asked.entrySet()) {
            JsonNode schema = document.at("/paths/" + one.getKey().replace("/", "~1")
                    + "/get/responses/200/content/application~1json/schema");
            assertThat(schema.isMissingNode()).as(one.getKey()).isFalse();
            for (String more : one.getValue()) {
                String path =
                        one.getKey().contains("{key}") ? one.getKey().replace("{key}", more) : one.getKey() + more;
                assertThat(faults(get(path), schema, "$")).as(path).isEmpty();
            }
        }
    }

    /// What of JSON Schema the document uses: type, properties, required, additionalProperties, items, oneOf, enum,
    /// $ref.
    private List<String> faults(JsonNode value, JsonNode schema, String at) {
        if (schema.has("$ref")) {
            return faults(value, document.at(schema.get("$ref").asText().substring(1)), at);
        }
        if (schema.has("oneOf")) {
            long fits = 0;
            for (JsonNode one : schema.get("oneOf")) {
                fits += faults(value, one, at).isEmpty() ? 1 : 0;
            }
            return fits == 1 ? List.of() : List.of(at + " fits " + fits + " of oneOf: " + value);
        }
        List<String> faults = new ArrayList<>();
        String type = schema.get("type").asText();
        boolean typed = switch (type) {
            case "object" -> value.isObject();
            case "array" -> value.isArray();
            case "string" -> value.isTextual();
            case "integer" -> value.isIntegralNumber();
            case "boolean" -> value.isBoolean();
            default -> false;
        };
        if (!typed) {
            return List.of(at + " is no " + type + ": " + value);
        }
        if (schema.has("enum")) {
            boolean listed = false;
            for (JsonNode one : schema.get("enum")) {
                listed |= one.equals(value);
            }
            if (!listed) {
                faults.add(at + " is not listed: " + value);
            }
        }
        schema.path("required").forEach(name -> {
            if (!value.has(name.asText())) {
                faults.add(at + " lacks " + name.asText());
            }
        });
        value.fields().forEachRemaining(field -> {
            JsonNode own = schema.path("properties").path(field.getKey());
            if (!own.isMissingNode()) {
                faults.addAll(faults(field.getValue(), own, at + "." + field.getKey()));
            } else if (schema.has("properties")) {
                faults.add(at + " has " + field.getKey() + " too");
            }
        });
        if (value.isArray()) {
            value.forEach(one -> faults.addAll(faults(one, schema.get("items"), at + "[]")));
        }
        return faults;
    }

    @Test
    void theMainQuestionsAreAnswered() throws IOException {
        JsonNode need = get("/api/v1/need?q=" + encoded("fall color, zone 6, part shade, under 5 ft"));
        assertThat(need.get("read").size()).isEqualTo(4);
        assertThat(need.get("meet_all").asInt()).isPositive();
        assertThat(need.get("plants").get(0).get("reasons").size()).isEqualTo(4);
        assertThat(get("/api/v1/names?q=" + encoded("korry lopsis spicata"))
                        .at("/plants/0/name")
                        .asText())
                .startsWith("Corylopsis");
        JsonNode plant = get("/api/v1/plants/" + key("Itea virginica"));
        assertThat(plant.get("facts"))
                .allSatisfy(fact -> assertThat(fact.get("source").asText()).isNotBlank());
        int plants = get("/api/v1/plants?limit=1").get("total").asInt();
        assertThat(get("/api/v1/plants?limit=100&skip=" + (plants - 3))
                        .get("plants")
                        .size())
                .isEqualTo(3);
    }

    @Test
    void troubleIsToldAsData() throws IOException {
        var missing = shop.get("/api/v1/plants/none");
        assertThat(missing.statusCode()).isEqualTo(404);
        JsonNode told = json.readTree(missing.body());
        assertThat(faults(told, document.at("/components/schemas/Trouble"), "$"))
                .isEmpty();
        assertThat(told.get("status").asInt()).isEqualTo(404);
        assertThat(json.readTree(shop.get("/api/v9/none").body()).get("problem").asText())
                .isNotBlank();
    }

    @Test
    void anAnswerIsNotSentTwice() {
        String tag = shop.get("/api/v1/available").headers().firstValue("ETag").orElseThrow();
        assertThat(shop.get("/api/v1/available", "If-None-Match", tag).statusCode())
                .isEqualTo(304);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
