package org.benchleaf.catalog.accounts;

import java.time.Instant;

/// One entry of the audit log, which only grows.
///
/// @param number counts up
/// @param at when
/// @param actor who, and from where
/// @param act what was done: `signed.in`, `staff.added`; its sentence is a word of the content under
///     `audit.` + act
/// @param about of whom or what; may be empty
public record AuditLine(long number, Instant at, Actor actor, String act, String about) {}
