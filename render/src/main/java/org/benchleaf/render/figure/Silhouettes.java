package org.benchleaf.render.figure;

import java.util.List;
import java.util.Set;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.shared.color.Srgb;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;

/// Chooses and draws the silhouette of a plant by its kind and habit.
final class Silhouettes {
    private static final Srgb LEAF_GREEN = new Srgb(0x6F, 0x84, 0x62);

    private Silhouettes() {}

    /// @param footX where it stands
    /// @param groundY the ground
    /// @param width spread in points
    /// @param height in points
    static List<Mark> draw(SizeLook size, double footX, double groundY, double width, double height) {
        Srgb leaf = size.leaf().map(color -> color.srgb()).orElse(LEAF_GREEN);
        Habit habit = size.habit().orElseGet(() -> usualHabit(size.lifeForms()));
        Brush brush = new Brush(footX, groundY, leaf, 17 + habit.ordinal() * 31L);
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
            new WoodyShapes(brush, width, height).tree(habit);
        } else if (forms.contains(LifeForm.PERENNIAL)
                || forms.contains(LifeForm.BULB)
                || forms.contains(LifeForm.ANNUAL)
                || forms.contains(LifeForm.GROUNDCOVER) && !forms.contains(LifeForm.SHRUB)) {
            new HerbShapes(brush, width, height).perennial(habit);
        } else {
            new WoodyShapes(brush, width, height).shrub(habit);
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
