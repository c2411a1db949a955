package org.benchleaf.app.web.walk;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.service.PhotoFolder;
import org.benchleaf.app.web.route.Access;
import org.benchleaf.app.web.route.Headers;
import org.benchleaf.app.web.route.Keeping;
import org.benchleaf.app.web.route.Reply;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.app.web.route.Route;
import org.benchleaf.catalog.walk.CropWalks;
import org.benchleaf.catalog.walk.NotedSighting;
import org.benchleaf.catalog.walk.Settlement;
import org.benchleaf.catalog.walk.Sighting;
import org.benchleaf.catalog.walk.Standing;
import org.benchleaf.content.Wording;
import org.benchleaf.render.picture.Picture;
import org.benchleaf.render.picture.PictureReader;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.Reading;

/// What telephones send. Every sighting is answered, in the order sent: one that cannot be taken does
/// not hold back the others, and none is lost without a word.
final class SightingsApi {
    /// A walk of some hundred sightings.
    private static final long MOST_BYTES = 1024 * 1024L;
    /// A photograph as telephones take them, though ours are made smaller before they are sent.
    private static final long PHOTOGRAPH_BYTES = 16 * 1024 * 1024L;

    private final Benchleaf benchleaf;
    private final CropWalks walks;
    private final Wording wording;
    private final ConflictWords conflicts;
    private final PhotoFolder photographs;

    SightingsApi(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.walks = benchleaf.walks();
        this.wording = benchleaf.wording();
        this.conflicts = new ConflictWords(wording, benchleaf.zone());
        this.photographs = new PhotoFolder(benchleaf.workspace().photographsFolder());
    }

    List<Route> routes() {
        Access walker = new Access.SignedIn(Right.WALK);
        return List.of(
                Route.post("/walk/sightings", walker, Headers.FILE, this::note).upTo(MOST_BYTES),
                Route.post("/walk/photographs/{key}", walker, Headers.FILE, this::photograph)
                        .upTo(PHOTOGRAPH_BYTES),
                Route.get("/walk/conflicts", walker, Keeping.NEVER, Headers.FILE, request -> conflicts()),
                Route.post("/walk/settle", walker, Headers.FILE, this::settle));
    }

    private Reply note(Request request) {
        Optional<JsonNode> sent = WalkJson.read(request.body()).filter(JsonNode::isArray);
        if (sent.isEmpty()) {
            return Reply.status(400);
        }
        List<Map<String, String>> answers = new ArrayList<>();
        for (JsonNode one : sent.get()) {
            Reading<Sighting> sighting = SightingReader.read(one, request.who().name());
            Reading<NotedSighting> noted = sighting.flatMap(walks::note);
            answers.add(
                    switch (noted) {
                        case Reading.Read<NotedSighting>(NotedSighting value) -> answer(value);
                        case Reading.Refused<NotedSighting>(Problem problem) ->
                            answer(WalkJson.text(one, "key").orElse(""), "refused", wording.problem(problem));
                    });
        }
        benchleaf.afterChange();
        return WalkJson.reply(Map.of("sightings", answers));
    }

    private Reply conflicts() {
        return WalkJson.reply(
                Map.of("sightings", walks.conflicts().stream().map(this::answer).toList()));
    }

    private Reply settle(Request request) {
        Optional<JsonNode> sent = WalkJson.read(request.body()).filter(JsonNode::isObject);
        Optional<Settlement> how = sent.flatMap(SightingsApi::settlement);
        Optional<String> key = sent.flatMap(node -> WalkJson.text(node, "key"));
        if (how.isEmpty() || key.isEmpty()) {
            return Reply.status(400);
        }
        Reading<NotedSighting> settled =
                walks.settle(key.get(), how.get(), request.who().name());
        benchleaf.afterChange();
        return settled.toOptional().map(this::answer).map(WalkJson::reply).orElseGet(() -> Reply.status(404));
    }

    private static Optional<Settlement> settlement(JsonNode node) {
        return WalkJson.text(node, "how").flatMap(how -> switch (how) {
            case "AS_SEEN" -> Optional.of(new Settlement.AsSeen());
            case "NOTE_ONLY" -> Optional.of(new Settlement.NoteOnly());
            case "OTHER_LOT" -> WalkJson.text(node, "lot").map(Settlement.AtLot::new);
            default -> Optional.empty();
        });
    }

    /// Keeps a photograph under the key of its sighting: made anew, upright, without what the camera
    /// noted.
    private Reply photograph(Request request) {
        String key = request.part("key");
        if (!Sighting.isKey(key)) {
            return Reply.status(400);
        }
        Reading<Picture> read = PictureReader.read(request.body(), key);
        return switch (read) {
            case Reading.Read<Picture>(Picture picture) -> {
                photographs.keep(SightingReader.photograph(key), picture.jpeg());
                yield WalkJson.reply(Map.of("kept", true));
            }
            case Reading.Refused<Picture>(Problem problem) ->
                WalkJson.reply(Map.of("refused", wording.problem(problem.with("name", ""))));
        };
    }

    private Map<String, String> answer(NotedSighting noted) {
        String key = noted.sighting().key();
        return switch (noted.standing()) {
            case Standing.Noted() -> answer(key, "noted", "");
            case Standing.InConflict(Problem problem) -> answer(key, "conflict", conflicts.of(problem));
            case Standing.Settled settled -> answer(key, "settled", "");
        };
    }

    private static Map<String, String> answer(String key, String standing, String text) {
        return Map.of("key", key, "standing", standing, "text", text);
    }
}
