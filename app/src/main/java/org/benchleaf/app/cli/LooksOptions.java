package org.benchleaf.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.app.Refusal;
import org.benchleaf.shared.Problem;
import org.benchleaf.shared.color.ColorFamily;
import org.benchleaf.shared.fact.Region;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Creature;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.plant.Season;
import org.benchleaf.shared.plant.Sex;
import org.benchleaf.shared.plant.Use;
import org.benchleaf.shared.plant.Wildlife;
import picocli.CommandLine.Option;

/// What a plant looks like and does, as options.
final class LooksOptions {
    @Option(
            names = "--form",
            paramLabel = "FORMS",
            description =
                    "tree, shrub, conifer, grass, fern, perennial, groundcover, vine, bulb; several parted by commas")
    private Optional<String> forms = Optional.empty();

    @Option(
            names = "--foliage",
            paramLabel = "FOLIAGE",
            description = "evergreen, semi-evergreen, deciduous or herbaceous; several parted by commas")
    private Optional<String> foliage = Optional.empty();

    @Option(names = "--habit", paramLabel = "HABIT", description = "outline, for example columnar")
    private Optional<String> habit = Optional.empty();

    @Option(
            names = "--shows",
            paramLabel = "WHAT[:COLOR[:MONTHS]]",
            description = "flower, foliage, fall color, fruit or stem; for example 'flower:white:Jun'; may be repeated")
    private List<String> shows = List.of();

    @Option(names = "--in-winter", description = "worth seeing in winter: stems, fruit, leaves or flowers")
    private boolean inWinter;

    @Option(names = "--fragrant", description = "scents the air")
    private boolean fragrant;

    @Option(
            names = "--feeds",
            paramLabel = "WHAT",
            description = "nectar, pollen, larval host, bird food, cover or nesting; may be repeated")
    private List<String> feeds = List.of();

    @Option(
            names = "--native",
            paramLabel = "STATE",
            arity = "0..1",
            fallbackValue = "",
            description = "native to this state or province; without one, to the United States or Canada")
    private Optional<String> nativeTo = Optional.empty();

    @Option(
            names = "--use",
            paramLabel = "USE",
            description = "hedge, screen, massing, rain garden ...; may be repeated")
    private List<String> uses = List.of();

    @Option(
            names = "--safe-for",
            paramLabel = "WHOM",
            description = "no known caution for dogs, cats, horses, children ...; may be repeated")
    private List<String> safeFor = List.of();

    @Option(names = "--sex", paramLabel = "SEX", description = "male, female, perfect, monoecious or dioecious")
    private Optional<String> sex = Optional.empty();

    @Option(names = "--fruits-alone", description = "fruits without a partner")
    private boolean fruitsAlone;

    /// The wishes given.
    List<Wish> wishes() {
        List<Wish> wishes = new ArrayList<>();
        forms.ifPresent(text -> wishes.add(new Wish.OfForm(Given.words(LifeForm.class, text))));
        foliage.ifPresent(text -> wishes.add(new Wish.OfFoliage(Given.words(Foliage.class, text))));
        habit.ifPresent(text -> wishes.add(new Wish.OfHabit(Given.word(Habit.class, text))));
        shows.forEach(text -> wishes.add(shows(text)));
        if (inWinter) {
            wishes.add(new Wish.ShowsInWinter());
        }
        if (fragrant) {
            wishes.add(new Wish.Fragrant());
        }
        feeds.forEach(text -> wishes.add(new Wish.Feeds(Given.word(Wildlife.class, text))));
        nativeTo.ifPresent(text -> wishes.add(
                new Wish.NativeTo(text.isEmpty() ? Optional.empty() : Optional.of(Given.ok(Region.read(text))))));
        uses.forEach(text -> wishes.add(new Wish.ServesAs(Given.word(Use.class, text))));
        safeFor.forEach(text -> wishes.add(new Wish.SafeFor(Given.word(Creature.class, text))));
        sex.ifPresent(text -> wishes.add(new Wish.OfSex(Given.word(Sex.class, text))));
        if (fruitsAlone) {
            wishes.add(new Wish.FruitsAlone());
        }
        return wishes;
    }

    private static Wish shows(String text) {
        String[] parts = text.split(":", 3);
        Season season = Given.word(Season.class, parts[0]);
        Optional<ColorFamily> color = parts.length < 2 || parts[1].isBlank()
                ? Optional.empty()
                : Optional.of(ColorFamily.ofWord(parts[1])
                        .orElseThrow(() -> new Refusal(Problem.of("color.unknown", parts[1]))));
        Optional<MonthSet> months =
                parts.length < 3 ? Optional.empty() : Optional.of(Given.ok(MonthSet.read(parts[2])));
        return new Wish.Shows(season, months, color);
    }
}
