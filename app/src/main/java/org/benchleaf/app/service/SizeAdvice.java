package org.benchleaf.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.plant.LifeForm;
import org.benchleaf.shared.stock.BallStandard;
import org.benchleaf.shared.stock.ContainerClass;
import org.benchleaf.shared.stock.LiftWeight;
import org.benchleaf.shared.stock.RootPackage;
import org.benchleaf.shared.stock.StockSize;

/// What the nursery standard says of a size: volumes of a class, where a caliper is taken, the least ball;
/// advice, no rule.
public final class SizeAdvice {
    private static final double LITERS_A_CUBIC_INCH = 0.016387064; // exact: 1 in = 2.54 cm

    private final Wording words;

    public SizeAdvice(Wording words) {
        this.words = words;
    }

    /// Which table of balls a plant falls under; conifers' where nothing is known of it, for they ask for
    /// more.
    public static BallStandard.Kind kind(Facts facts) {
        Set<LifeForm> forms = facts.value(Attributes.LIFE_FORM).orElse(Set.of());
        return forms.contains(LifeForm.SHRUB) && !forms.contains(LifeForm.CONIFER)
                ? BallStandard.Kind.DECIDUOUS_SHRUB
                : BallStandard.Kind.CONE_TYPE_CONIFER;
    }

    /// Sentences; none for a pot by its diameter or bare roots without a caliper.
    public List<String> of(StockSize size, BallStandard.Kind kind) {
        List<String> said = new ArrayList<>();
        switch (size) {
            case StockSize.Container(ContainerClass of) -> said.add(container(of));
            case StockSize.Caliper caliper ->
                said.add(words.text(
                        "size.advice.caliper", Map.of("inches", Integer.toString(caliper.measuredAtInches()))));
            case StockSize.Height(int low, int high, RootPackage roots) -> usual(low, high, said);
            case StockSize.Spread(int low, int high, RootPackage roots) -> usual(low, high, said);
            case StockSize.MetricPot pot -> {}
        }
        BallStandard.leastInches(size, kind)
                .ifPresent(across -> said.add(words.text(
                        "size.advice.ball",
                        Map.of(
                                "across",
                                Integer.toString(across),
                                "deep",
                                Integer.toString(BallStandard.leastDepthInches(across))))));
        LiftWeight.of(size)
                .filter(weight -> weight.pounds() > 0)
                .ifPresent(weight ->
                        said.add(words.text("size.advice.weight", Map.of("pounds", words.count(weight.pounds())))));
        return said;
    }

    private String container(ContainerClass of) {
        return words.text(
                "size.advice.container",
                Map.of(
                        "mark", of.mark(),
                        "least", number(of.minCubicInches()),
                        "most", number(of.maxCubicInches()),
                        "leastLiters", liters(of.minCubicInches()),
                        "mostLiters", liters(of.maxCubicInches())));
    }

    private String number(double cubicInches) {
        return cubicInches == Math.rint(cubicInches)
                ? words.count((long) cubicInches)
                : String.format(words.language(), "%.1f", cubicInches);
    }

    private String liters(double cubicInches) {
        double liters = cubicInches * LITERS_A_CUBIC_INCH;
        return String.format(words.language(), liters < 10 ? "%.2f" : "%.1f", liters);
    }

    private void usual(int low, int high, List<String> said) {
        OptionalInt upper = BallStandard.usualUpperInches(low);
        if (!BallStandard.isUsual(low, high) && upper.isPresent()) {
            said.add(words.text("size.advice.span", Map.of("from", inches(low), "to", inches(upper.getAsInt()))));
        }
    }

    private static String inches(int inches) {
        return inches > 24 && inches % 12 == 0 ? inches / 12 + " ft" : inches + " in";
    }
}
