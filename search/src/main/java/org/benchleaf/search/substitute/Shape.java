package org.benchleaf.search.substitute;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.Facts;
import org.benchleaf.shared.measure.LengthRange;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.LifeForm;

/// What a plant is and how big it gets, as wishes. The weights and shares are ours, no source.
final class Shape {
    /// A size is the same within these shares of the original's.
    private static final double TALLER = 1.15;

    private static final double LOWER = 0.75;
    private static final double NARROWER = 0.5;
    /// Steps of sizes asked for, so that alike originals ask alike: a tenth of a power of e, about a tenth of
    /// the length.
    private static final double STEPS = 10;
    /// A climber grown over the ground stands no higher, in cm.
    private static final int LYING_CM = 45;
    /// A conifer is no shrub above this height, in cm.
    private static final int TREE_CM = 450;
    /// What hides a neighbor stands above a person's head, in cm.
    private static final int HEAD_CM = 200;

    private final Role role;
    private final Facts facts;
    private final WishList wishes;
    private final Set<LifeForm> own;

    Shape(Role role, Facts facts, WishList wishes) {
        this.role = role;
        this.facts = facts;
        this.wishes = wishes;
        this.own = facts.value(Attributes.LIFE_FORM).orElse(Set.of());
    }

    void ask() {
        kind();
        size();
    }

    /// What climbs covers the ground only where it is called a groundcover, or is wanted for one.
    boolean coversGround() {
        boolean climbsOnly = own.contains(LifeForm.VINE) && !own.contains(LifeForm.GROUNDCOVER);
        return role.coversGround() && !(climbsOnly && role.use().isEmpty());
    }

    private void kind() {
        Optional<Foliage> foliage = facts.value(Attributes.FOLIAGE);
        boolean evergreen = foliage.map(known -> known == Foliage.EVERGREEN || known == Foliage.SEMI_EVERGREEN)
                .orElse(false);
        if (!own.isEmpty()) {
            wishes.add(new Wish.OfForm(forms(evergreen)), 3);
        }
        if (evergreen) {
            wishes.add(new Wish.OfFoliage(Set.of(Foliage.EVERGREEN)), coversGround() ? 1 : 2);
        } else {
            foliage.ifPresent(known -> wishes.add(new Wish.OfFoliage(Set.of(known)), 0.5));
        }
        facts.value(Attributes.HABIT).ifPresent(habit -> wishes.add(new Wish.OfHabit(habit), 0.3));
    }

    /// The kinds of plant that can do the work: what covers the ground may be of any low kind, and needles
    /// serve where leaves do all year.
    private Set<LifeForm> forms(boolean evergreen) {
        EnumSet<LifeForm> forms = EnumSet.copyOf(own);
        if (coversGround() && (own.contains(LifeForm.GROUNDCOVER) || role.use().isPresent())) {
            forms.addAll(List.of(LifeForm.GROUNDCOVER, LifeForm.PERENNIAL, LifeForm.FERN, LifeForm.GRASS));
        }
        if (evergreen && (own.contains(LifeForm.SHRUB) || own.contains(LifeForm.TREE))) {
            forms.add(LifeForm.CONIFER);
        }
        if (own.contains(LifeForm.CONIFER)) {
            forms.add(isTallerThan(TREE_CM).orElse(true) ? LifeForm.TREE : LifeForm.SHRUB);
        }
        if (evergreen && isBamboo()) {
            forms.addAll(List.of(LifeForm.SHRUB, LifeForm.CONIFER, LifeForm.TREE));
        }
        return forms;
    }

    /// A grass that stands like a wall: what woody plants do for screens and no other grass does all year.
    private boolean isBamboo() {
        return own.contains(LifeForm.GRASS)
                && role.looks().isEmpty()
                && isTallerThan(HEAD_CM).orElse(false);
    }

    private Optional<Boolean> isTallerThan(int cm) {
        return facts.value(Attributes.HEIGHT).map(height -> height.middleCm() > cm);
    }

    private void size() {
        boolean climbs = own.contains(LifeForm.VINE);
        if (climbs && coversGround()) {
            wishes.add(new Wish.NoTallerThan(LYING_CM), 1.5);
            return;
        }
        facts.value(Attributes.HEIGHT).ifPresent(height -> {
            // a plant that outgrows its place is worse than one that stays lower
            wishes.add(new Wish.NoTallerThan(step(height.highCm() * TALLER)), 3);
            wishes.add(new Wish.AtLeastTall(step(height.middleCm() * LOWER)), 1);
        });
        Optional<LengthRange> spread = facts.value(Attributes.SPREAD);
        if (spread.isPresent() && !coversGround() && !climbs) {
            wishes.add(new Wish.NoWiderThan(step(spread.get().highCm() * TALLER * TALLER)), 1);
            wishes.add(new Wish.AtLeastWide(step(spread.get().middleCm() * NARROWER)), 0.5);
        }
    }

    private static int step(double cm) {
        return Math.max(1, (int) Math.round(Math.exp(Math.round(Math.log(cm) * STEPS) / STEPS)));
    }
}
