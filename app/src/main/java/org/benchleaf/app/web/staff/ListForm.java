package org.benchleaf.app.web.staff;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.PlantAmount;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.catalog.lists.ListSite;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;
import org.benchleaf.shared.Term;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.measure.ZoneRange;
import org.benchleaf.shared.plan.Spacing;
import org.benchleaf.shared.rule.Destination;
import org.benchleaf.shared.site.Exposure;
import org.benchleaf.shared.site.Moisture;

/// What a form of a plant list says, field by field as it was typed.
///
/// @param fields by their names
record ListForm(Map<String, String> fields) {
    private static final String[] NAMES = {
        "name",
        "zone",
        "light",
        "soil",
        "ship-to",
        "by",
        "plant",
        "size",
        "quantity",
        "area",
        "row",
        "rows",
        "spacing",
        "pattern",
        "waste",
        "note"
    };

    ListForm {
        fields = Map.copyOf(fields);
    }

    static ListForm empty() {
        return new ListForm(Map.of());
    }

    static ListForm of(Request request) {
        Map<String, String> fields = new TreeMap<>();
        for (String name : NAMES) {
            fields.put(name, Desk.field(request, name));
        }
        return new ListForm(fields);
    }

    String field(String name) {
        return fields.getOrDefault(name, "");
    }

    /// Every field, those that nobody filled in too.
    Map<String, String> all() {
        Map<String, String> all = new TreeMap<>();
        for (String name : NAMES) {
            all.put(name, field(name));
        }
        return all;
    }

    /// The same with where a list is planted.
    ListForm at(ListSite site) {
        Map<String, String> all = all();
        all.put("zone", site.zone().map(Object::toString).orElse(""));
        all.put("light", site.light().map(Exposure::term).orElse(""));
        all.put("soil", site.soil().map(Moisture::term).orElse(""));
        all.put("ship-to", site.shipTo().map(Destination::toString).orElse(""));
        all.put("by", site.by().map(week -> week.monday().toString()).orElse(""));
        return new ListForm(all);
    }

    /// @throws Refusal when a field is not understood
    ListSite site() {
        return new ListSite(
                given("zone").map(text -> ok(ZoneRange.read(text)).coldest()),
                given("light").map(text -> ok(Term.read(Exposure.class, text))),
                given("soil").map(text -> ok(Term.read(Moisture.class, text))),
                given("ship-to").map(text -> ok(Destination.read(text))),
                given("by").map(text -> ok(YearWeek.read(text))));
    }

    /// @throws Refusal when no number comes of it
    PlantAmount amount(Wording wording) {
        if (given("quantity").isEmpty()
                && given("area").isEmpty()
                && given("row").isEmpty()) {
            throw Desk.refusal("desk.list.amount", "");
        }
        return new PlantAmount.Asked(
                        given("quantity").map(text -> number(text, "desk.number")),
                        given("area"),
                        given("row"),
                        given("rows").map(text -> number(text, "list.rows")).orElse(1),
                        given("spacing"),
                        field("pattern").equals("triangular") ? Spacing.Pattern.TRIANGULAR : Spacing.Pattern.SQUARE,
                        given("waste").map(ListForm::percent).orElse(0.0))
                .amount(wording);
    }

    private Optional<String> given(String name) {
        return Desk.present(field(name));
    }

    static int number(String text, String problem) {
        String digits = text.replace(",", "");
        if (!digits.matches("[1-9]\\d{0,5}")) {
            throw Desk.refusal(problem, text);
        }
        return Integer.parseInt(digits);
    }

    private static double percent(String text) {
        try {
            return Double.parseDouble(text.replace("%", "").strip());
        } catch (NumberFormatException typed) {
            throw Desk.refusal("list.waste", text);
        }
    }

    static <T> T ok(Reading<T> reading) {
        return switch (reading) {
            case Reading.Read<T>(T value) -> value;
            case Reading.Refused<T>(Problem problem) -> throw new Refusal(problem);
        };
    }
}
