package org.benchleaf.app.web.staff;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.benchleaf.catalog.intake.ImportPlan;

/// Plans that were shown and wait for a yes, the newest few. A plan knows the state of the catalog that it was worked
/// out against, so that one which waited too long is refused and not applied to something else.
final class PendingImports {
    private static final int MOST = 8;

    private final Map<String, Pending> waiting = new LinkedHashMap<>();

    /// @param who worked it out; nobody else says yes to it
    record Pending(String who, ImportPlan plan) {}

    synchronized String keep(String who, ImportPlan plan) {
        if (waiting.size() >= MOST) {
            waiting.remove(waiting.keySet().iterator().next());
        }
        String id = UUID.randomUUID().toString();
        waiting.put(id, new Pending(who, plan));
        return id;
    }

    /// Hands a plan out once.
    synchronized Optional<ImportPlan> take(String id, String who) {
        Pending pending = waiting.get(id);
        if (pending == null || !pending.who().equals(who)) {
            return Optional.empty();
        }
        waiting.remove(id);
        return Optional.of(pending.plan());
    }
}
