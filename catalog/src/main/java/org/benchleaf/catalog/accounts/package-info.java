/// Who may sign in, as what, and what they did: staff, sessions, keys for programs, guessing held off,
/// the audit log.
///
/// The rules stand here and know no SQL; [AccountStore] is the port to the database.
@NullMarked
package org.benchleaf.catalog.accounts;

import org.jspecify.annotations.NullMarked;
