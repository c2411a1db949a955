package org.benchleaf.search.need;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.need.Wish;
import org.benchleaf.shared.plant.Foliage;
import org.benchleaf.shared.plant.LifeForm;

/// The wish for everything else: `no vines`, `not evergreen`. Few wishes have one; a plant that is not wanted for wet
/// soil is not thereby wanted for dry.
final class Opposite {
    private Opposite() {}

    static Optional<Wish> of(List<Wish> wishes) {
        return wishes.size() == 1 ? of(wishes.getFirst()) : Optional.empty();
    }

    private static Optional<Wish> of(Wish wish) {
        return switch (wish) {
            case Wish.OfForm(var forms) -> all(LifeForm.class, forms).map(Wish.OfForm::new);
            case Wish.OfFoliage(var foliage) -> all(Foliage.class, foliage).map(Wish.OfFoliage::new);
            default -> Optional.empty();
        };
    }

    private static <E extends Enum<E>> Optional<Set<E>> all(Class<E> vocabulary, Set<E> but) {
        EnumSet<E> others = EnumSet.allOf(vocabulary);
        others.removeAll(but);
        return others.isEmpty() ? Optional.empty() : Optional.of(others);
    }
}
