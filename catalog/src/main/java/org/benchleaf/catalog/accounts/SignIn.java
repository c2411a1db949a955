package org.benchleaf.catalog.accounts;

import java.time.Duration;

/// What came of an attempt to sign in.
public sealed interface SignIn {
    /// @param token opens the session; goes into the cookie and is not stored
    /// @param member who
    record Done(String token, StaffMember member) implements SignIn {}

    /// Name and password are not of one member who may sign in; which of them is wrong is not said.
    record Wrong() implements SignIn {}

    /// Too many attempts failed; the password was not looked at.
    ///
    /// @param pause how long until the next one is looked at
    record Held(Duration pause) implements SignIn {}
}
