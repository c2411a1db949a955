package org.benchleaf.app.web.route;

import java.util.Set;

/// Somebody the guard knows.
///
/// @param name as it stands in the audit log
/// @param rights what they may do
/// @param formToken what forms made for this session send along; empty for a program with a token
public record Identity(String name, Set<Right> rights, String formToken) {
    public Identity {
        rights = Set.copyOf(rights);
    }

    public boolean may(Right right) {
        return rights.contains(right);
    }

    /// Without the token, which is nobody's to log.
    @Override
    public String toString() {
        return name + " " + rights;
    }
}
