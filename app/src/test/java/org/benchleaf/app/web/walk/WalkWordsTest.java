package org.benchleaf.app.web.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.LengthStyle;
import org.junit.jupiter.api.Test;

class WalkWordsTest {
    private static final Path CONTENT = Path.of("../content/src/main/resources/org/benchleaf/content");
    /// `words("find.title")`, `words(known ? "one" : "other")`, `way("kept.as-seen", ...)`.
    private static final Pattern ASKED = Pattern.compile("\"([a-z][a-z-]*(?:\\.[a-z-]+)*)\"");

    private final Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.BOTH);

    @Test
    void scriptsAskForEveryWordTheyAreSentAndForNoOther() throws IOException {
        Set<String> sent = words.keys().stream()
                .filter(key -> key.startsWith("walk.ui."))
                .map(key -> key.substring("walk.ui.".length()))
                .collect(Collectors.toCollection(TreeSet::new));
        String scripts = all(CONTENT.resolve("scripts/walk"));
        String template = Files.readString(CONTENT.resolve("templates/walk.ftlh"));
        Set<String> idle = new TreeSet<>(sent);
        Matcher literal = ASKED.matcher(scripts);
        while (literal.find()) {
            idle.remove(literal.group(1));
        }
        idle.removeIf(key -> key.startsWith("top.") || template.contains("walk.ui." + key));
        assertThat(idle).as("asked for nowhere").isEmpty();

        Matcher asked = Pattern.compile("words\\(\"([^\"]+)\"").matcher(scripts);
        int count = 0;
        while (asked.find()) {
            assertThat(sent).contains(asked.group(1));
            count++;
        }
        assertThat(count).isGreaterThan(30);
    }

    @Test
    void theLineAtTheTopHasWordsForEveryStateOfSending() {
        for (String state : new String[] {"idle", "sending", "no-signal", "sign-in"}) {
            assertThat(words.text("walk.ui.top.waiting." + state)).contains("{count}");
        }
    }

    private static String all(Path folder) throws IOException {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                text.append(Files.readString(file));
            }
        }
        return text.toString();
    }
}
