package org.benchleaf.app.web.staff;

import java.util.EnumSet;
import java.util.Set;
import org.benchleaf.app.web.route.Right;
import org.benchleaf.catalog.accounts.Role;

/// What each role may do; `docs/staff.md` prints it.
final class StaffRights {
    private StaffRights() {}

    static Set<Right> of(Role role) {
        return switch (role) {
            case VIEWER -> EnumSet.of(Right.SELF, Right.LOOK);
            case WALKER -> EnumSet.of(Right.SELF, Right.LOOK, Right.WALK);
            case PRINTER -> EnumSet.of(Right.SELF, Right.LOOK, Right.PRINT);
            case EDITOR -> EnumSet.of(Right.SELF, Right.LOOK, Right.WALK, Right.EDIT, Right.PRINT);
            case OWNER -> EnumSet.allOf(Right.class);
            case CUSTOMER -> EnumSet.of(Right.SELF);
        };
    }

    /// The table as it is printed for people, in Markdown.
    static String table() {
        StringBuilder table = new StringBuilder("| role |");
        for (Right right : Right.values()) {
            table.append(' ').append(name(right)).append(" |");
        }
        table.append("\n|---|").append("---|".repeat(Right.values().length)).append('\n');
        for (Role role : Role.values()) {
            table.append("| ").append(role.term()).append(" |");
            for (Right right : Right.values()) {
                table.append(of(role).contains(right) ? " yes |" : " |");
            }
            table.append('\n');
        }
        return table.toString();
    }

    private static String name(Right right) {
        return right.name().toLowerCase(java.util.Locale.ROOT);
    }
}
