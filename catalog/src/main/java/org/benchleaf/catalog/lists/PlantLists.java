package org.benchleaf.catalog.lists;

import java.util.List;
import java.util.Optional;

/// The plant lists of a catalog. Safe for many threads.
public interface PlantLists {
    /// Names of all lists, in their order.
    List<String> names();

    /// A list by its name; case does not matter.
    Optional<PlantList> find(String name);

    /// Writes a list as a whole; when this returns, it survives a power cut.
    ///
    /// @return the list as saved, one version on
    /// @throws org.benchleaf.catalog.ListRefused when there is one of that name already (`list.exists`), or
    ///     somebody saved it meanwhile (`list.stale`)
    PlantList save(PlantList list);

    /// Deletes a list.
    ///
    /// @return false when there is none of that name
    boolean delete(String name);
}
