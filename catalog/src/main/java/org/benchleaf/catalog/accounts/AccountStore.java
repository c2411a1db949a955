package org.benchleaf.catalog.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// The port to the database; each method is one transaction. Secrets come as their sums.
public interface AccountStore {
    List<StaffMember> staff();

    /// @param folded a name as [StaffMember#folded] writes it
    Optional<Credential> credential(String folded);

    /// @param password as it is stored
    record Credential(StaffMember member, String password) {}

    /// @return false when the name is taken
    boolean add(StaffMember member, String password, Note note);

    /// Sets role and activity; who is no longer active loses sessions and tokens.
    ///
    /// @return false when no owner would be left
    boolean change(StaffMember member, Note note);

    /// Sets a password and ends every session of its owner.
    void setPassword(String folded, String password, Note note);

    /// Failures counted under a subject, such as `account:anna`.
    ///
    /// @param failures how many, the last of them at `last`
    record Failures(int failures, Instant last) {}

    /// Decides by failures so far, and counts a further one before the password is looked at, so that
    /// attempts made at once do not slip past.
    ///
    /// @return as the gate decided; when it let the attempt in, every subject has one failure more
    <T> T attempt(List<String> subjects, Instant forgottenBefore, Instant now, Gate<T> gate);

    /// Reads failures in the order of the subjects.
    interface Gate<T> {
        Ruling<T> judge(List<Failures> failures);
    }

    /// @param counts whether the attempt is let in, and so counts
    record Ruling<T>(T value, boolean counts) {}

    /// Opens a session.
    ///
    /// @param forgotten a subject whose failures are forgotten
    /// @param forgiven a subject from which one failure is taken back: whoever has one good name does
    ///     not buy attempts on others with it
    void open(String sessionSum, StaffSession session, String forgotten, String forgiven, Note note);

    /// Whether a member signed in from an address after a moment.
    boolean signedInFrom(String folded, String address, Instant after);

    Optional<StaffSession> session(String sessionSum);

    void seen(String sessionSum, Instant now);

    List<StaffSession> sessions(String folded);

    /// Ends one session, or every session of a member for an empty id.
    ///
    /// @return how many ended
    int end(String folded, Optional<String> id, Note note);

    /// Removes sessions that nobody can use any more.
    void sweep(Instant startedBefore, Instant seenBefore);

    void addToken(String tokenSum, AccessToken token, Note note);

    Optional<AccessToken> token(String tokenSum);

    List<AccessToken> tokens(String folded);

    /// @return false when there is none of this id
    boolean removeToken(String folded, String id, Note note);

    void used(String tokenSum, Instant now);

    /// What the audit log takes up with a change, in the same transaction.
    record Note(Instant at, Actor actor, String act, String about) {}

    void write(Note note);

    /// Entries before a number, the newest first.
    List<AuditLine> log(long before, int most);

    /// Entries of an act that are about something which begins so, the newest first.
    List<AuditLine> log(String act, String start, int most);
}
