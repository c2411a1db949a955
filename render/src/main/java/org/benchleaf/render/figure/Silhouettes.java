package org.benchleaf.render.figure;

import java.util.List;
import java.util.Set;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.color.Srgb;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;

/// Chooses and draws the silhouette of a plant by its kind and habit.
final class Silhouettes {
    private static final Srgb BARK = new Srgb(0x75, 0x68, 0x5B);
    private static final Srgb LEAF_GREEN = new Srgb(0x6F, 0x84, 0x62);

    private Silhouettes() {}

    /// @param footX where it stands
    /// @param groundY the ground
    /// @param width spread in points
    /// @param height in points
    static List<Mark> draw(SizeLook size, double footX, double groundY, double width, double height) {
        Srgb leaf = size.leaf().map(color -> color.srgb()).orElse(LEAF_GREEN);
        return draw(size, footX, groundY, width, height, leaf, false);
    }

    /// The same in winter: bare when it is one that drops its leaves, with twigs of its own color where one is known.
    static List<Mark> inWinter(SizeLook size, double footX, double groundY, double width, double height) {
        return isBareInWinter(size)
                ? draw(
                        size,
                        footX,
                        groundY,
                        width,
                        height,
                        size.stem().map(PlantColor::srgb).orElse(BARK),
                        true)
                : draw(size, footX, groundY, width, height);
    }

    /// Whether it is a tree or shrub, no climber, that stands without leaves in winter.
    static boolean isBareInWinter(SizeLook size) {
        Set<LifeForm> forms = size.lifeForms();
        boolean woody = (forms.contains(LifeForm.TREE) || forms.contains(LifeForm.SHRUB))
                && !forms.contains(LifeForm.CONIFER)
                && !forms.contains(LifeForm.VINE);
        return woody && size.foliage().filter(Foliage.DECIDUOUS::equals).isPresent();
    }

    private static List<Mark> draw(
            SizeLook size, double footX, double groundY, double width, double height, Srgb leaf, boolean bare) {
        Habit habit = size.habit().orElseGet(() -> usualHabit(size.lifeForms()));
        Brush brush = new Brush(footX, groundY, leaf, 17 + habit.ordinal() * 31L, bare);
        Set<LifeForm> forms = size.lifeForms();
        if (forms.contains(LifeForm.CONIFER)) {
            new ConiferShapes(brush, width, height).draw(habit);
        } else if (forms.contains(LifeForm.GRASS)) {
            new HerbShapes(brush, width, height).grass(habit);
        } else if (forms.contains(LifeForm.FERN)) {
            new HerbShapes(brush, width, height).fern();
        } else if (forms.contains(LifeForm.VINE) && habit != Habit.MAT && habit != Habit.SPREADING) {
            new HerbShapes(brush, width, height).climber();
        } else if (forms.contains(LifeForm.TREE)) {
            new WoodyShapes(brush, width, height, bare).tree(habit);
        } else if (forms.contains(LifeForm.PERENNIAL)
                || forms.contains(LifeForm.BULB)
                || forms.contains(LifeForm.ANNUAL)
                || forms.contains(LifeForm.GROUNDCOVER) && !forms.contains(LifeForm.SHRUB)) {
            new HerbShapes(brush, width, height).perennial(habit);
        } else {
            new WoodyShapes(brush, width, height, bare).shrub(habit);
        }
        return brush.marks();
    }

    private static Habit usualHabit(Set<LifeForm> forms) {
        if (forms.contains(LifeForm.CONIFER)) {
            return Habit.PYRAMIDAL;
        }
        if (forms.contains(LifeForm.GRASS)) {
            return Habit.FOUNTAIN;
        }
        if (forms.contains(LifeForm.VINE)) {
            return Habit.CLIMBING;
        }
        if (forms.contains(LifeForm.GROUNDCOVER)) {
            return Habit.MAT;
        }
        return forms.contains(LifeForm.PERENNIAL) ? Habit.CLUMP : Habit.ROUNDED;
    }

    /// Spread as a share of height where nobody has stated the spread; only for the drawing.
    static double usualProportion(Habit habit) {
        return switch (habit) {
            case COLUMNAR -> 0.25;
            case PYRAMIDAL -> 0.5;
            case UPRIGHT, OVAL, CLIMBING -> 0.65;
            case VASE, ROUNDED, WEEPING, MULTISTEM, CLUMP, IRREGULAR -> 0.9;
            case FOUNTAIN, ARCHING, MOUNDED, ROSETTE -> 1.2;
            case SPREADING -> 1.6;
            case MAT -> 4;
        };
    }
}
