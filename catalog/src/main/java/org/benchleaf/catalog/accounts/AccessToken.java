package org.benchleaf.catalog.accounts;

import java.time.Instant;
import java.util.Optional;

/// Lets a program in as a member of staff, without a password. The token itself is shown once and not
/// stored.
///
/// @param id names it on screen; opens nothing
/// @param label what it is for
/// @param member whose it is, as they are now: it may what they may
/// @param madeAt when
/// @param endsAt after which it opens nothing
/// @param usedAt about when it was last used
public record AccessToken(
        String id, String label, StaffMember member, Instant madeAt, Instant endsAt, Optional<Instant> usedAt) {}
