package org.benchleaf.catalog.accounts;

/// Who does something, and from where: every entry of the audit log names both.
///
/// @param who a member of staff, or the user of the machine for a command
/// @param from a network address, or `command line`
public record Actor(String who, String from) {
    public static final String COMMAND_LINE = "command line";
}
