package org.benchleaf.catalog.accounts;

import java.time.Instant;

/// Somebody who is signed in on one device.
///
/// @param id names the session on screen; opens nothing
/// @param member as they are now, not as they were when they signed in
/// @param startedAt when they signed in
/// @param seenAt about when they were last heard of
/// @param from the address they signed in from
/// @param device as the browser calls itself
public record StaffSession(
        String id, StaffMember member, Instant startedAt, Instant seenAt, String from, String device) {}
