package org.benchleaf.app.web.route;

/// What somebody who signed in may do. A role is a set of these.
public enum Right {
    /// Looks after one's own devices, password and tokens, and is told what customers are told.
    SELF,
    /// Sees what staff sees: counts, prices, lists.
    LOOK,
    /// Sends what was seen on a walk.
    WALK,
    /// Changes plants, stock and lists.
    EDIT,
    /// Prints.
    PRINT,
    /// Lets people in, changes the shop's settings, backs up.
    OWN
}
