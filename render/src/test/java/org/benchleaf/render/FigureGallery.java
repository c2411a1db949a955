package org.benchleaf.render;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.render.figure.SizeStand;
import org.benchleaf.render.figure.SvgWriter;
import org.benchleaf.render.figure.YearRing;
import org.benchleaf.render.page.Show;
import org.benchleaf.render.page.SizeLook;
import org.benchleaf.render.page.YearLook;
import org.benchleaf.shared.color.PlantColor;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.measure.LengthStyle;
import org.benchleaf.shared.measure.MonthSet;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.Habit;
import org.benchleaf.shared.plant.LifeForm;

/// Writes every silhouette and some year rings into one HTML page, to be looked at.
final class FigureGallery {
    private FigureGallery() {}

    public static void main(String[] args) throws IOException {
        Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL);
        StringBuilder page = new StringBuilder(
                "<meta charset=utf8><style>:root{--fig-text:#262A26;--fig-soft:#5A605A;--fig-line:#8A908A;"
                        + "--fig-track:#CFD3CC;--fig-scale:#C3C8C1;--fig-paper:#fff}svg{font-family:'Source Sans 3',sans-serif;width:312px;margin:6px;border:1px dotted #eee}"
                        + ".r svg{width:230px}div{display:inline-block;font:10px sans-serif}</style>");
        int n = 0;
        for (Habit habit : Habit.values()) {
            page.append("<div>tree ")
                    .append(habit)
                    .append("<br>")
                    .append(stand(words, LifeForm.TREE, habit, "30-40 ft", treeSpread(habit), "15 ft", "#5F7F4A", n++))
                    .append("</div>");
            page.append("<div>shrub ")
                    .append(habit)
                    .append("<br>")
                    .append(stand(words, LifeForm.SHRUB, habit, "4-6 ft", shrubSpread(habit), "3 ft", "#6B8A57", n++))
                    .append("</div>");
            page.append("<div>conifer ")
                    .append(habit)
                    .append("<br>")
                    .append(stand(
                            words, LifeForm.CONIFER, habit, "15-20 ft", treeSpread(habit), "6-8 ft", "#4E6E58", n++))
                    .append("</div>");
            page.append("<div>perennial ")
                    .append(habit)
                    .append("<br>")
                    .append(stand(words, LifeForm.PERENNIAL, habit, "24-30 in", "24 in", "", "#74915A", n++))
                    .append("</div>");
        }
        for (Habit habit : List.of(Habit.UPRIGHT, Habit.FOUNTAIN, Habit.CLUMP)) {
            page.append("<div>grass ")
                    .append(habit)
                    .append("<br>")
                    .append(stand(words, LifeForm.GRASS, habit, "4-5 ft", "3 ft", "", "#8FA163", n++))
                    .append("</div>");
        }
        page.append("<div>fern<br>")
                .append(stand(words, LifeForm.FERN, Habit.CLUMP, "24-36 in", "30 in", "", "#5C8A4A", n++))
                .append("</div>");
        page.append("<div>vine<br>")
                .append(stand(words, LifeForm.VINE, Habit.CLIMBING, "10-15 ft", "6 ft", "", "#5C7A4A", n++))
                .append("</div>");
        page.append("<div>30 m tree<br>")
                .append(stand(words, LifeForm.TREE, Habit.OVAL, "80-100 ft", "40-60 ft", "20-25 ft", "#5C7A4A", n++))
                .append("</div>");
        page.append("<div>10 cm mat<br>")
                .append(stand(words, LifeForm.GROUNDCOVER, Habit.MAT, "3-4 in", "18-24 in", "", "#6C8A5A", n++))
                .append("</div><br>");
        for (YearLook year : List.of(itea(), evergreen(), YearLook.unknown(), dogwood())) {
            page.append("<div class=r>")
                    .append(SvgWriter.write(YearRing.draw(year, "x", words), "r" + n++))
                    .append("</div>");
        }
        Files.writeString(Path.of(args[0]), page);
    }

    private static String treeSpread(Habit habit) {
        return switch (habit) {
            case COLUMNAR -> "6-8 ft";
            case SPREADING, WEEPING -> "25-35 ft";
            case MAT -> "30 ft";
            default -> "20-25 ft";
        };
    }

    private static String shrubSpread(Habit habit) {
        return switch (habit) {
            case COLUMNAR -> "18-24 in";
            case SPREADING, MAT -> "8 ft";
            default -> "4-5 ft";
        };
    }

    private static String stand(
            Wording words, LifeForm form, Habit habit, String height, String spread, String ten, String leaf, int id) {
        SizeLook size = new SizeLook(
                LengthRange.read(height).toOptional(),
                LengthRange.read(spread).toOptional(),
                LengthRange.read(ten).toOptional(),
                Optional.empty(),
                Optional.of(habit),
                Set.of(form),
                form == LifeForm.TREE || form == LifeForm.SHRUB ? Optional.of(Foliage.DECIDUOUS) : Optional.empty(),
                PlantColor.read("green " + leaf).toOptional());
        return SvgWriter.write(SizeStand.draw(size, "x", 312, 190, words), "s" + id);
    }

    private static List<PlantColor> colors(String text) {
        return PlantColor.readList(text).orThrow();
    }

    private static Optional<Show> show(String colors, String months) {
        return Optional.of(new Show(colors(colors), MonthSet.read(months).orThrow()));
    }

    static YearLook itea() {
        return new YearLook(
                show("white #F3F1E6", "Jun-Jul"),
                Optional.of(Foliage.DECIDUOUS),
                List.of(),
                colors("green #5E7F4B"),
                colors("crimson #9C2233; orange #C8602B; burgundy #6A1F33"),
                MonthSet.read("Oct-Nov").toOptional(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    static YearLook evergreen() {
        return new YearLook(
                show("white #F6F3EA; pink #E5A9B8", "Mar-Apr"),
                Optional.of(Foliage.EVERGREEN),
                colors("red #B5432F"),
                colors("green #3F6B3E"),
                List.of(),
                Optional.empty(),
                colors("bronze #6B5436"),
                show("red #B8272F", "Sep-Feb"),
                show("cinnamon #9A5B35", "Jan-Dec"));
    }

    static YearLook dogwood() {
        return new YearLook(
                show("white #F6F3EA", "May-Jun"),
                Optional.of(Foliage.DECIDUOUS),
                List.of(),
                colors("green #66864F; white #E8E8D8"),
                colors("burgundy #7A2B3C"),
                MonthSet.read("Oct").toOptional(),
                List.of(),
                show("blue #8FA0C0; white #EDEDED", "Aug-Sep"),
                show("red #B3262B", "Nov-Mar"));
    }
}
